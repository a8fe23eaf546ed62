// A published table is bundled as text; the reader in this room checks it.
declare module '*.csv?raw' {
  const text: string;
  export default text;
}
declare module '*.bib?raw' {
  const text: string;
  export default text;
}
