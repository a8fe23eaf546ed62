/** The version in package.json, put in by the build. */
declare const __FLYLARDER_VERSION__: string;
