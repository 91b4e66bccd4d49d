// Speed against its aim, and the wing's three controls against their bands. Black on white; shape says it all.
import { html } from '../dom.js';
import { t } from '../text.js';

/** Share of the target that the gauge spans, and the band that counts as on target (chosen). */
const FROM = 0.8;
const TO = 1.1;
const BAND = [0.98, 1.02];

const place = (value, from, to) => Math.min(1, Math.max(0, (value - from) / (to - from)));
const percent = (part) => `${(100 * part).toFixed(1)}%`;

/** One gauge: aim band, tick, tail of the last seconds, and from where to where the share may lie (two standard errors). */
export function SpeedGauge({ values }) {
  const share = values.share_ratio;
  const tail = values.tail_ratio ?? [];
  const [low, high] = [values.share_low_ratio, values.share_high_ratio];
  const sure = Number.isFinite(low) && Number.isFinite(high);
  const reachable = Number.isFinite(values.reachable_kn);
  const parts = { share: Math.round(100 * share), low: Math.round(100 * low), high: Math.round(100 * high) };
  const said = t(reachable && sure ? 'web.live.gauge_reachable' : 'web.live.gauge', parts);
  const known = Number.isFinite(share);
  const at = (value) => place(value, FROM, TO);
  const past = tail.filter(Number.isFinite);
  const oldest = past.length ? past[0] : share;
  const left = Math.min(at(oldest), at(share));
  return html`
    <div class=${`gauge${known ? '' : ' unknown'}`} role="img" aria-label=${known ? said : t('web.live.gauge_unknown')}>
      <div class="track">
        <div class="band" style=${{ left: percent(at(BAND[0])), width: percent(at(BAND[1]) - at(BAND[0])) }}></div>
        ${known && html`
          <div class="tail" style=${{ left: percent(left), width: percent(Math.abs(at(oldest) - at(share))) }}></div>
          ${sure && html`<div class="error" style=${{ left: percent(at(low)), width: percent(at(high) - at(low)) }}></div>`}
          <div class="tick" style=${{ left: percent(at(share)) }}></div>`}
      </div>
      <div class="ends"><span>${t('web.live.slower')}</span><b>${t(reachable ? 'web.live.on_reachable' : 'web.live.on_target')}</b><span>${t('web.live.faster')}</span></div>
    </div>`;
}

/** Degrees to either side of the aim that a bar spans (chosen: wider than the bands). */
const REACH = { sheet: 6, twist: 10, camber: 10 };

/** A short bar of one control. */
export function TrimBar({ control, values }) {
  const value = values[`${control}_deg`];
  const aim = values[`${control}_aim_deg`];
  const low = values[`${control}_low_deg`];
  const high = values[`${control}_high_deg`];
  const aimed = Number.isFinite(aim);
  const known = aimed && Number.isFinite(value);
  const at = (one) => place(one, aim - REACH[control], aim + REACH[control]);
  const inside = known && value >= low && value <= high;
  const word = !known ? 'unknown' : inside ? 'inside' : value < low ? 'below' : 'above';
  return html`
    <div class=${`trim ${word}`} role="img" aria-label=${`${t(`web.live.${control}`)}: ${t(`web.live.trim.${word}`)}`}>
      <b>${t(`web.live.${control}`)}</b>
      <div class="track">
        ${aimed && html`<div class="band" style=${{ left: percent(at(low)), width: percent(at(high) - at(low)) }}></div>`}
        ${known && html`<div class="tick" style=${{ left: percent(at(value)) }}></div>`}
      </div>
      <div class="ends"><span>${t(`web.live.${control}.less`)}</span><${Marks} control=${control} values=${values} known=${known} /><span>${t(`web.live.${control}.more`)}</span></div>
    </div>`;
}

/** Share of the limit that the moment's bar begins at, and the least of the aim that counts as carried (chosen). */
const MOMENT_FROM = 0.6;
const CARRIED = 0.95;

/** The moment against its aim, which is the top of its band, and the limit at the bar's end; where load cells tell it. */
export function MomentBar({ values }) {
  const { heeling_moment_nm: value, moment_aim_nm: aim, moment_limit_nm: limit, turbulence_ratio: gusts } = values;
  if (!Number.isFinite(value) || !Number.isFinite(aim)) return null;
  const at = (one) => place(one / limit, MOMENT_FROM, 1.02);
  const word = value > aim ? 'above' : value < CARRIED * aim ? 'below' : 'inside';
  const parts = { value: Math.round(value / 1000), aim: Math.round(aim / 1000), limit: Math.round(limit / 1000) };
  return html`
    <div class=${`trim carried ${word}`} role="img" aria-label=${`${t('web.live.moment')}: ${t(`web.live.trim.${word}`)}`}>
      <b>${t('web.live.moment')}</b>
      <div class="track">
        <div class="band" style=${{ left: percent(at(CARRIED * aim)), width: percent(at(aim) - at(CARRIED * aim)) }}></div>
        <div class="stop" style=${{ left: percent(at(limit)) }}></div>
        <div class="tick" style=${{ left: percent(at(value)) }}></div>
      </div>
      <div class="ends"><span>${t(Number.isFinite(gusts) ? 'web.live.gusts' : 'web.live.gusts_usual', { turbulence: Math.round(100 * gusts) })}</span>
        <b class="marks">${parts.value} \u2192 ${parts.aim}</b><span>${t('web.live.moment_limit', parts)}</span></div>
    </div>`;
}

/** What the crew reads now and would read at the aim, where the boat has marks. */
function Marks({ control, values, known }) {
  const now = values[`${control}_mark`];
  const aim = values[`${control}_aim_mark`];
  if (!known) return html`<span>\u2013</span>`;
  return now && aim ? html`<b class="marks">${now} \u2192 ${aim}</b>` : html`<span></span>`;
}
