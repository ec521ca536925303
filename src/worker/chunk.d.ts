/** The address of a module built as a chunk of its own (scripts/chunkAddress.ts). */
declare module "*?chunk" {
  const address: string;
  export default address;
}
