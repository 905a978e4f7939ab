/** Every picture of a sheet by its name. Draws through the file of each kind. */
import type { PictureView, SheetView } from '../view/sheet-view';
import { massPicture, railsPicture } from './bars';
import type { Picture } from './picture';
import { planDrawing, stackDrawing } from './plan-drawing';
import { plotPicture } from './plot';
import { harnessPicture, portsPicture } from './wiring';

export function drawn(picture: PictureView, linked: boolean): Picture | undefined {
  switch (picture.draw) {
    case 'plan':
      return planDrawing(picture.view, linked);
    case 'stack':
      return stackDrawing(picture.view, linked);
    case 'plot':
      return plotPicture(picture.view, linked);
    case 'mass':
      return massPicture(picture.view, linked);
    case 'rails':
      return railsPicture(picture.view, linked);
    case 'ports':
      return portsPicture(picture.view, linked);
    case 'harness':
      return harnessPicture(picture.view, linked);
  }
}

export const picturesOf = (sheet: SheetView): readonly Picture[] =>
  sheet.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.is === 'picture' ? (drawn(block.picture, false) ?? []) : [])),
  );
