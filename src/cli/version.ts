/** The version in package.json, put in by the build. */
export const flylarderVersion = __FLYLARDER_VERSION__;
