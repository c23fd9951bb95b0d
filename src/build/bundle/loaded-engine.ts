/** The engine as `bundle-engine.mjs` loads it. */
export interface Engine {
  /** Changes with every edit of the engine or of a package it uses. */
  readonly version: string;
  /** The address of its bundle, from which another thread takes it. */
  readonly file: string;
  /** Stands for the templates, styles and scripts of the npm package, which does not bring all their sources along. */
  readonly siteKey?: string;
}
