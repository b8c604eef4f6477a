import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ConsentGiver,
  consentGivers,
  minorNameForms,
  type NamedExhibitor,
  type NameSetting,
  publicName,
  publicNameForms,
  showsHorse,
} from '../../src/office/public-name.ts';

const setting: NameSetting = {
  backNumber: 214,
  minorPublicName: 'back-number',
  firstDay: '2026-10-31',
  inYouthClass: false,
};
const ada: NamedExhibitor = {
  name: 'Ada Mae Kessler',
  bornOn: null,
  publicName: null,
  consent: null,
  erased: false,
};
const child = { ...ada, bornOn: '2013-05-02' };
const by = (givenBy: ConsentGiver, givenOn = '2026-09-01') => ({ givenBy, givenOn });

describe('the public form of a name', () => {
  test('without a word on record: an adult by full name, a child as the show says', () => {
    expect(publicName({ ...ada, bornOn: '1990-01-01' }, setting)).toBe('Ada Mae Kessler');
    expect(publicName(ada, setting)).toBe('Ada Mae Kessler');
    expect(publicName(child, setting)).toBe('No. 214');
    expect(publicName(child, { ...setting, minorPublicName: 'first-name-and-initial' })).toBe('Ada K.');
  });

  test('someone of unknown age is a child to every class, once entered in a youth class', () => {
    expect(publicName(ada, { ...setting, inYouthClass: true })).toBe('No. 214');
    expect(publicName({ ...ada, bornOn: '1990-01-01' }, { ...setting, inYouthClass: true })).toBe(ada.name);
  });

  test.each(['parent', 'guardian'] as const)("a %s's word goes before the show's default", (giver) => {
    const shown = (form: (typeof publicNameForms)[number]) =>
      publicName({ ...child, publicName: form, consent: by(giver) }, setting);
    expect(publicNameForms.map(shown)).toEqual(['Ada Mae Kessler', 'Ada K.', 'No. 214']);
  });

  test("a child's own word may hide more, never show more", () => {
    const own = (form: (typeof publicNameForms)[number], minorPublicName: NameSetting['minorPublicName']) =>
      publicName({ ...child, publicName: form, consent: by('exhibitor') }, { ...setting, minorPublicName });
    expect(own('full', 'back-number')).toBe('No. 214');
    expect(own('full', 'first-name-and-initial')).toBe('Ada K.');
    expect(own('back-number', 'first-name-and-initial')).toBe('No. 214');
  });

  test('the own word of someone who came of age before giving it counts, though she was a child on the first day', () => {
    const young = { ...ada, bornOn: '2008-11-02', publicName: 'full' as const };
    expect(publicName({ ...young, consent: by('exhibitor', '2026-11-02') }, setting)).toBe(ada.name);
    expect(publicName({ ...young, consent: by('exhibitor', '2026-11-01') }, setting)).toBe('No. 214');
  });

  test('a form that nobody on record asked for hides, and does not show', () => {
    expect(publicName({ ...child, publicName: 'full' }, setting)).toBe('No. 214');
    expect(publicName({ ...ada, publicName: 'back-number' }, setting)).toBe('No. 214');
  });

  test('childhood ends on the 18th birthday, for one of 29 February on 1 March', () => {
    const on = (bornOn: string, firstDay: string) => publicName({ ...ada, bornOn }, { ...setting, firstDay });
    expect(on('2008-10-31', '2026-10-31')).toBe(ada.name);
    expect(on('2008-11-01', '2026-10-31')).toBe('No. 214');
    expect(on('2008-02-29', '2026-02-28')).toBe('No. 214');
    expect(on('2008-02-29', '2026-03-01')).toBe(ada.name);
  });

  test('whoever goes by back number goes without the name of the horse; so does a child of one name', () => {
    const careful = { ...setting, minorPublicName: 'first-name-and-initial' } as const;
    expect(showsHorse(child, setting)).toBe(false);
    expect(showsHorse(child, careful)).toBe(true);
    expect(publicName({ ...child, name: 'Ada' }, careful)).toBe('No. 214');
    expect(showsHorse({ ...child, name: 'Ada' }, careful)).toBe(false);
  });

  const anyone = fc.record({
    name: fc.constant(ada.name),
    bornOn: fc.constantFrom(null, '1990-01-01', '2008-10-31', '2008-11-01', '2019-07-04'),
    publicName: fc.constantFrom(null, ...publicNameForms),
    consent: fc.option(
      fc.record({
        givenBy: fc.constantFrom(...consentGivers),
        givenOn: fc.constantFrom('2026-01-01', '2027-01-01'),
      }),
      { nil: null },
    ),
    erased: fc.boolean(),
  });
  const anywhere = fc.record({
    backNumber: fc.constant(214),
    minorPublicName: fc.constantFrom(...minorNameForms),
    firstDay: fc.constant('2026-10-31'),
    inYouthClass: fc.boolean(),
  });

  test("law: a child's full name is shown by a parent's or guardian's word alone", () => {
    fc.assert(
      fc.property(anyone, anywhere, (who, where) => {
        const minor = who.bornOn === null ? where.inYouthClass : who.bornOn > '2008-10-31';
        const grownUp = who.bornOn !== null && who.consent?.givenOn === '2027-01-01' && who.bornOn < '2009';
        if (!minor || publicName(who, where) !== who.name) return;
        expect(who.publicName).toBe('full');
        if (!grownUp) expect(['parent', 'guardian']).toContain(who.consent?.givenBy);
      }),
    );
  });

  test('law: an erased name is never shown, and neither is her horse', () => {
    fc.assert(
      fc.property(anyone, anywhere, (who, where) => {
        const erased = { ...who, erased: true };
        expect([publicName(erased, where), showsHorse(erased, where)]).toEqual(['No. 214', false]);
      }),
    );
  });
});
