import { useMemo, useState, type ReactElement } from 'react';
import {
  asLookId,
  lineUp,
  PERSONNEL,
  readLook,
  shapesFor,
  SIDES,
  type Personnel,
  type Shape,
  type Side,
} from '../../../engine/index.ts';
import { buildLookScene, LIGHT_THEME, toSvg } from '../../../scene/index.ts';
import { newLook, type Entry } from '../../../store/index.ts';
import { Radios, Select, type Option } from '../../parts/Choice.tsx';
import { useApp } from '../../session/session.ts';
import { MakeDialog } from '../../dialogs/MakeDialog.tsx';
import { PlainText } from '../parts/PlainText.tsx';
import { useMake } from '../parts/useMake.ts';

interface Props {
  readonly onMade: (entry: Entry) => void;
  readonly onClose: () => void;
}

const CODES: readonly Option<string>[] = PERSONNEL.map(({ code, backs, tightEnds }) => ({
  value: code,
  label: `${code}: ${counted(backs, 'back')}, ${counted(tightEnds, 'tight end')}, ${counted(5 - backs - tightEnds, 'receiver')}`,
}));

const SIDE_OPTIONS: readonly Option<Side>[] = SIDES.map((value) => ({ value, label: value }));

/** Asks who is in, the shape and the side; the look can be dragged from there. */
export function NewLook({ onMade, onClose }: Props): ReactElement {
  const make = useMake('looks', onMade);
  const looks = useApp((state) => state.playbook.looks);
  const [who, setWho] = useState<Personnel>(PERSONNEL[0] ?? { code: '11', backs: 1, tightEnds: 1 });
  const [wanted, setWanted] = useState<string>('trips');
  const [strong, setStrong] = useState<Side>('right');
  const [typed, setTyped] = useState<string | null>(null);
  const shapes = shapesFor(who);
  const shape: Shape | undefined = shapes.find(({ id }) => id === wanted) ?? shapes[0];
  if (shape === undefined) throw new Error('A code without a shape');
  const name = typed ?? freshName(`${who.code} ${shape.name} ${strong}`, looks);
  return (
    <MakeDialog
      title="New look"
      action="Make it"
      onMake={() => make(`made the look ${name}`, (now) => newLook(now, { name, who, shape, strong }))}
      onClose={onClose}
    >
      <div className="rule-fields">
        <Select
          label="Personnel"
          wide
          value={who.code}
          options={CODES}
          onChoose={(code) => {
            const found = PERSONNEL.find((each) => each.code === code);
            if (found !== undefined) setWho(found);
          }}
        />
        <Select
          label="Formation"
          value={shape.id}
          options={shapes.map(({ id, name: label }): Option<string> => ({ value: id, label }))}
          onChoose={(id) => {
            if (id !== null) setWanted(id);
          }}
        />
        <Radios legend="Strong to" hint="the defence’s" value={strong} options={SIDE_OPTIONS} onChoose={setStrong} />
      </div>
      <Picture who={who} shape={shape} strong={strong} />
      <PlainText label="Name of the look" value={name} onChange={setTyped} />
    </MakeDialog>
  );
}

interface PictureProps {
  readonly who: Personnel;
  readonly shape: Shape;
  readonly strong: Side;
}

/** Width of the picture, in CSS pixels. */
const WIDTH = 420;

function Picture({ who, shape, strong }: PictureProps): ReactElement {
  const level = useApp((state) => state.playbook.team.level);
  const spot = useApp((state) => state.board.spot);
  const turned = useApp((state) => state.view.turned);
  const source = useMemo(() => {
    const players = lineUp(who, shape, strong);
    const look = { id: asLookId('new'), name: '', players, motion: null, runs: [], protections: [] };
    const scene = buildLookScene(readLook(look, level, spot), level, spot);
    const svg = toSvg(scene, LIGHT_THEME, { flip: turned, width: WIDTH });
    return `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  }, [who, shape, strong, level, spot, turned]);
  return <img className="look-picture" src={source} alt={`${who.code} ${shape.name}, strong to the ${strong}`} />;
}

function counted(count: number, one: string): string {
  if (count === 0) return `no ${one}`;
  return count === 1 ? `1 ${one}` : `${count} ${one}s`;
}

/** That name, or the same with a number when a look has it already. */
function freshName(name: string, looks: readonly { readonly name: string }[]): string {
  const taken = new Set(looks.map((look) => look.name));
  let number = 2;
  while (taken.has(number === 2 ? name : `${name} ${number - 1}`)) number += 1;
  return number === 2 ? name : `${name} ${number - 1}`;
}
