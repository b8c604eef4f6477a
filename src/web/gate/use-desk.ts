import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { GateDesk } from './desk/gate-desk.ts';

export const DeskContext = createContext<GateDesk | undefined>(undefined);

export function useDesk(): GateDesk {
  const desk = useContext(DeskContext);
  if (desk === undefined) throw new Error('a screen of the gate without its desk');
  return desk;
}
