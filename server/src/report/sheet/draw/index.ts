/** What draws a sheet, as one bundle that is loaded when a sheet is asked for. It must not contain anything but names. */
export { pictureFile, sheetPage, sheetPicture } from './page';
export { picturesOf } from './pictures';
export { type Drawn, drawSections } from './section';
export { pageRules, pictureRules } from './style';
