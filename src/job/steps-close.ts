/** The steps that close the vessel: heads, hoops, bung, test, handing over. */
import { massesOf } from '../capacity/mass.js';
import { capacityLitres } from '../capacity/volume.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { headsOf } from './heads.js';
import type { Step } from './steps.js';
import { atHeads, ofHeads } from './steps-ring.js';

/** A cask; a tub has a bottom only. */
const isClosed = ({ heads }: Vessel): boolean => heads.top !== null;

export const headStep: Step = (vessel, words, texts) => {
  const { head } = words.steps;
  const sentence = ({ spec: { edge }, landDepth }: Head): string =>
    head.text(
      texts.length(edge.thickness),
      texts.length(landDepth),
      texts.length(edge.fromInside),
      texts.length(edge.outerBevel),
      texts.length(edge.innerBevel),
    );
  return {
    title: isClosed(vessel) ? head.title : head.titleOpen,
    text: [head.joints, ...ofHeads(vessel, words, sentence)].join(' '),
    measures: atHeads(vessel, head.diameter, words, ({ diameter }) => texts.measure(diameter)),
    caution: head.caution,
  };
};

export const setHeadStep: Step = (vessel, { steps: { setHead } }, texts) => {
  const opening = Math.max(...headsOf(vessel).map(({ head }) => head.groove.opening));
  const girth = texts.length(2 * Math.PI * opening);
  const { caution } = setHead;
  const title = isClosed(vessel) ? setHead.title : setHead.titleOpen;
  return { title, text: setHead.text(texts.length(opening), girth), measures: [], caution };
};

export const hoopStep: Step = ({ hoops }, { ends, steps: { hoop } }, texts) => {
  if (hoops.length === 0) return null;
  const { title, caution } = hoop;
  // the same on both ends: said once
  const kinds = [...new Set(hoops.map(({ spec }) => spec))];
  const places = kinds.map(({ name, end, offset }) => {
    const place = hoop.place(texts.hoop(name), texts.length(offset));
    return end === 'both' ? place : `${place} (${ends[end]})`;
  });
  return { title, text: hoop.text(places.join(' · ')), measures: [], caution };
};

export const bungStep: Step = ({ spec }, { steps: { bung } }, texts) =>
  spec.bung && {
    title: bung.title,
    text: bung.text(texts.length(spec.bung.diameter)),
    measures: [],
    caution: '',
  };

export const testStep: Step = (vessel, { steps: { test } }, texts) => {
  const closed = isClosed(vessel);
  return {
    title: test.title,
    text: closed ? test.text : test.open,
    measures: [
      { name: test.litres, value: texts.litres(capacityLitres(vessel)) },
      { name: test.leaks, value: '' },
    ],
    caution: closed ? test.caution : test.openCaution,
  };
};

export const handOverStep: Step = (vessel, { steps: { handOver } }, texts) => {
  const closed = isClosed(vessel);
  const { title, text } = handOver;
  const full = texts.mass(massesOf(vessel).fullWithWater);
  const caution = [handOver.lifting(full), ...(closed ? [handOver.gas] : []), handOver.food];
  return { title, text, measures: [], caution: caution.join(' ') };
};
