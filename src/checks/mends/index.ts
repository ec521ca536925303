/** Single changes that mend what fails. */
export { changeOf, type Mend, mended, mends, mendsSearch } from "./mends";
export { sameThickness, shopShims } from "./shopShims";
