/** The bytes of a drawing file as text: files before 2007 are in a code page, later ones in UTF-8. */

/** The first version written in UTF-8 (2007); versions compare as words. */
const firstUnicodeVersion = "AC1021";

/** `$DWGCODEPAGE` → the label of the Encoding Standard. What is not listed is read as Western European. */
const codePages: Readonly<Record<string, string>> = {
  ANSI_874: "windows-874",
  ANSI_932: "shift_jis",
  ANSI_936: "gbk",
  ANSI_949: "euc-kr",
  ANSI_950: "big5",
  ANSI_1250: "windows-1250",
  ANSI_1251: "windows-1251",
  ANSI_1252: "windows-1252",
  ANSI_1253: "windows-1253",
  ANSI_1254: "windows-1254",
  ANSI_1255: "windows-1255",
  ANSI_1256: "windows-1256",
  ANSI_1257: "windows-1257",
  ANSI_1258: "windows-1258",
};

/** Text of a drawing file, with the `\U+xxxx` escapes of older files turned into their characters. */
export function decodeDrawing(bytes: Uint8Array): string {
  // The header is plain ASCII in every version, so any single-byte decoding shows it.
  const head = new TextDecoder("windows-1252").decode(bytes.subarray(0, 65_536));
  const version = /\$ACADVER\s+1\s+(AC\d+)/.exec(head)?.[1];
  const codePage = /\$DWGCODEPAGE\s+3\s+(\S+)/.exec(head)?.[1]?.toUpperCase();
  const encoding =
    version === undefined || version >= firstUnicodeVersion ? "utf-8" : (codePages[codePage ?? ""] ?? "windows-1252");
  const text = new TextDecoder(encoding).decode(bytes);
  return text.replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}
