/** Font files are put into the script as bytes. */
declare module "*.woff" {
  const bytes: Uint8Array;
  export default bytes;
}
