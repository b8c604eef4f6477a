/** Whose phone this is, and its classes. */
import { element } from './screens.ts';
import {
  type PhoneView,
  type SeatView,
  seatInWords,
  showInWords,
  whatForInWords,
  whoInWords,
} from './who.ts';

export function showPhone(phone: PhoneView): void {
  element('who', HTMLHeadingElement).textContent = whoInWords(phone);
  element('where', HTMLParagraphElement).textContent = showInWords(phone);
  element('what-for', HTMLParagraphElement).textContent = whatForInWords(phone);
  element('class-part', HTMLDivElement).hidden = phone.role === 'gate';
  element('no-classes', HTMLParagraphElement).hidden = phone.seats.length > 0;
  element('classes', HTMLUListElement).replaceChildren(...phone.seats.map(line));
}

function line(seat: SeatView): HTMLLIElement {
  const figure = part('number', String(seat.number));
  figure.prepend(part('heard', 'Class '));
  const words = part('words', `${seat.name} `);
  words.append(part('state', seatInWords(seat)));
  const item = document.createElement('li');
  item.append(figure, words);
  return item;
}

function part(name: string, text: string): HTMLSpanElement {
  const place = document.createElement('span');
  place.className = name;
  place.textContent = text;
  return place;
}
