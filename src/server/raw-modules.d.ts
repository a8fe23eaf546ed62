// A script for a browser is bundled as text and handed out as it is.
declare module '*.js?raw' {
  const text: string;
  export default text;
}
