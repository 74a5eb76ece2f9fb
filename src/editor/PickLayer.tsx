import { useRef, useState, type PointerEvent, type ReactElement } from 'react';
import { gapsEqual, type Point, type Yards } from '../engine/index.ts';
import type { PickPlace } from '../store/index.ts';
import { HIT_RADIUS } from './hit.ts';
import { MARK, pickAt, type Picked, type PickGround } from './hitPlaces.ts';
import { pixelOf } from './pointer.ts';
import type { PickEvent } from './tools/index.ts';
import { toPixels, type Pixel, type Size, type Viewport } from './viewport.ts';

interface Props {
  readonly ground: PickGround;
  readonly picking: Picked;
  readonly viewport: Viewport;
  readonly size: Size;
  /** What is under the pointer in words, written beside it: "A gap left". */
  readonly nameOf: (event: PickEvent) => string;
  readonly onEvent: (event: PickEvent) => void;
}

/** A press may wander this far and still be a click, in CSS pixels. */
const SLACK = 10;

/**
 * Lies over the field while a job is picked: shows what can be pointed at, lights what is pointed at, and says which it was.
 * Hidden from screen readers: the lists beside the field pick the same things.
 */
export function PickLayer({ ground, picking, viewport, size, nameOf, onEvent }: Props): ReactElement {
  const [over, setOver] = useState<{ readonly event: PickEvent; readonly at: Pixel } | null>(null);
  const pressed = useRef<Pixel | null>(null);
  const find = (event: PointerEvent<HTMLElement>): PickEvent | null => {
    const radius = HIT_RADIUS[event.pointerType === 'touch' ? 'coarse' : 'fine'];
    return pickAt(ground, picking, pixelOf(event), viewport, radius);
  };
  const look = (event: PointerEvent<HTMLElement>): void => {
    const found = find(event);
    setOver(found === null ? null : { event: found, at: pixelOf(event) });
  };
  const release = (event: PointerEvent<HTMLElement>): void => {
    const [from, to] = [pressed.current, pixelOf(event)];
    pressed.current = null;
    setOver(null);
    if (from === null || Math.hypot(from.px - to.px, from.py - to.py) > SLACK) return;
    const found = find(event);
    if (found !== null) onEvent(found);
  };
  const may = picking.man === null ? ground.defenders : [];
  const targets = picking.man === null ? [] : places(ground);
  const man = ground.defenders.find(({ role }) => role === picking.man);
  return (
    <div
      className="pick-layer"
      aria-hidden="true"
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        pressed.current = pixelOf(event);
        look(event);
      }}
      onPointerMove={look}
      onPointerLeave={() => setOver(null)}
      onPointerUp={release}
      onPointerCancel={() => {
        pressed.current = null;
        setOver(null);
      }}
    >
      <svg width={size.width} height={size.height} focusable="false">
        {may.map(({ role, at }) => (
          <Round key={role} at={at} viewport={viewport} className="pick-may" />
        ))}
        {targets.map((place) => (
          <Outline key={JSON.stringify(place)} place={place} ground={ground} viewport={viewport} className="pick-may" />
        ))}
        {man !== undefined && <Round at={man.at} viewport={viewport} className="pick-man" />}
        {picking.place !== null && (
          <Outline place={picking.place} ground={ground} viewport={viewport} className="pick-chosen" />
        )}
        {over !== null && (
          <Over over={over} ground={ground} viewport={viewport} size={size} name={nameOf(over.event)} />
        )}
      </svg>
    </div>
  );
}

/** Zones are lit only where the pointer is: all of them at once would hide the field. */
function places({ gaps, receivers, passer }: PickGround): readonly PickPlace[] {
  return [
    ...gaps.map(({ gap }): PickPlace => ({ kind: 'gap', gap })),
    ...receivers.map(({ player }): PickPlace => ({ kind: 'receiver', player })),
    ...(passer === null ? [] : [{ kind: 'passer' } as const]),
  ];
}

interface OverProps {
  readonly over: { readonly event: PickEvent; readonly at: Pixel };
  readonly ground: PickGround;
  readonly viewport: Viewport;
  readonly size: Size;
  readonly name: string;
}

function Over({ over: { event, at }, ground, viewport, size, name }: OverProps): ReactElement {
  const man = event.kind === 'man' ? ground.defenders.find(({ role }) => role === event.role) : undefined;
  const late = at.px > size.width / 2;
  return (
    <>
      {man !== undefined && <Round at={man.at} viewport={viewport} className="pick-over" />}
      {event.kind === 'place' && (
        <Outline place={event.place} ground={ground} viewport={viewport} className="pick-over" />
      )}
      <text
        className="pick-name"
        x={at.px + (late ? -14 : 14)}
        y={Math.max(at.py - 14, 16)}
        textAnchor={late ? 'end' : 'start'}
      >
        {name}
      </text>
    </>
  );
}

interface OutlineProps {
  readonly place: PickPlace;
  readonly ground: PickGround;
  readonly viewport: Viewport;
  readonly className: string;
}

function Outline({ place, ground, viewport, className }: OutlineProps): ReactElement | null {
  switch (place.kind) {
    case 'gap': {
      const area = ground.gaps.find(({ gap }) => gapsEqual(gap, place.gap));
      if (area === undefined) return null;
      const [a, b] = [
        toPixels(viewport, { x: area.left, y: area.top }),
        toPixels(viewport, { x: area.right, y: area.bottom }),
      ];
      return (
        <rect
          className={className}
          x={Math.min(a.px, b.px)}
          y={Math.min(a.py, b.py)}
          width={Math.abs(a.px - b.px)}
          height={Math.abs(a.py - b.py)}
          rx={3}
        />
      );
    }
    case 'receiver': {
      const at = ground.receivers.find(({ player }) => player === place.player)?.at;
      return at === undefined ? null : <Round at={at} viewport={viewport} className={className} />;
    }
    case 'passer':
      return ground.passer === null ? null : <Round at={ground.passer} viewport={viewport} className={className} />;
    case 'zone':
      return (
        <>
          {ground.zones
            .filter(({ zone, side }) => zone === place.zone && side === place.side)
            .map(({ at, rx, ry }, index) => (
              // The two rings of the quarters of one side, in a set order.
              <Round key={index} at={at} rx={rx} ry={ry} viewport={viewport} className={className} />
            ))}
        </>
      );
  }
}

interface RoundProps {
  readonly at: Point;
  readonly rx?: Yards;
  readonly ry?: Yards;
  readonly viewport: Viewport;
  readonly className: string;
}

function Round({ at, rx = MARK + 0.12, ry = rx, viewport, className }: RoundProps): ReactElement {
  const { px, py } = toPixels(viewport, at);
  return <ellipse className={className} cx={px} cy={py} rx={rx * viewport.scale} ry={ry * viewport.scale} />;
}
