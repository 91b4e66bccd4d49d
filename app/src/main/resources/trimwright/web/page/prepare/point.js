// The chosen point: speed, trim with its bands, loads, what binds, what to doubt, and the wing as it is set.
import { html } from '../dom.js';
import { follow } from '../address.js';
import { fixed, degrees, percent } from '../format.js';
import { t, wordFor } from '../text.js';
import { addressOf } from '../explore/inputs.js';
import { atAim } from './points.js';
import { WingDrawing } from './wing.js';

export function PointPanel({ boat, wing, point, aimReason }) {
  if (!point) return html`<section class="panel point"><p class="quiet">${t('web.prepare.no_point')}</p></section>`;
  return html`
    <section class="panel point" aria-labelledby="point-title">
      <div class="point-head">
        <h2 id="point-title">${t('web.prepare.point_title', { tws: fixed(point.tws_kn, 0), twa: fixed(point.twa_deg, 1) })}</h2>
        <p class="tags">
          <span class=${point.foiling ? 'tag foiling' : 'tag hulls'}>${t(point.foiling ? 'web.prepare.foiling' : 'web.prepare.on_hulls')}</span>
          ${point.mode !== 'angle' && html`<span class="tag best">${t(`web.prepare.best_${point.mode}`)}</span>`}
          <a class="explore-link" href=${addressOf(boat.id, wing.id, point)} onClick=${follow}>${t('web.explore.link')}</a>
        </p>
      </div>
      <dl class="figures">
        <${Figure} name="boat_speed" value=${fixed(point.boat_speed_kn)} unit="kn" main />
        <${Figure} name=${point.vmg_kn < 0 ? 'vmg_down' : 'vmg'} value=${fixed(Math.abs(point.vmg_kn))} unit="kn" />
        <${Figure} name="awa" value=${degrees(point.awa_deg, 1)} />
        <${Figure} name="aws" value=${fixed(point.aws_kn)} unit="kn" />
      </dl>
      <div class="point-body">
        <div class="trims">
          <h3>${t('web.prepare.trim')}</h3>
          <${Band} name="camber" point=${point} low=${0} high=${wing.camber_max_deg} />
          <${Band} name="twist" point=${point} low=${0} high=${wing.twist_max_deg} />
          <${Band} name="sheet" point=${point} low=${0} high=${wing.sheet_max_deg} />
          <p class="quiet">${t('web.prepare.band_note')}</p>
          <${Aim} boat=${boat} wing=${wing} point=${point} reason=${aimReason} />
          <h3>${t('web.prepare.costs')}</h3>
          <${Costs} point=${point} />
        </div>
        <${WingDrawing} boat=${boat} wing=${wing} point=${point} />
        <div class="rest">
          <h3>${t('web.prepare.lies')}</h3>
          <dl class="pairs">
            <${Pair} name="heel" value=${degrees(point.heel_deg, 1)} />
            <${Pair} name="ride_height" value=${`${fixed(point.ride_height_m, 2)} m`} />
            <${Pair} name="leeway" value=${degrees(point.leeway_deg, 1)} />
          </dl>
          <h3>${t('web.prepare.loads')}</h3>
          <${Load} name="righting_moment" ratio=${point.righting_moment_ratio} text=${percent(point.righting_moment_ratio)} />
          <${Load} name="sheet_load" ratio=${point.sheet_load_n / wing.sheet_load_max_n}
            text=${`${fixed(point.sheet_load_n / 1000, 2)} kN`} of=${`${fixed(wing.sheet_load_max_n / 1000, 1)} kN`} />
          <h3>${t('web.prepare.limits')}</h3>
          ${point.limits.length
            ? html`<ul class="plainlist">${point.limits.map((key) => html`<li>${wordFor(`web.limit.${key}`, key)}${gainOf(point, key)}</li>`)}</ul>`
            : html`<p class="quiet">${t('web.prepare.no_limits')}</p>`}
          ${point.caveats?.length > 0 && html`
            <h3>${t('web.prepare.caveats')}</h3>
            <ul class="plainlist doubt">${point.caveats.map((key) => html`<li>${wordFor(`web.caveat.${key}`, key)}</li>`)}</ul>`}
        </div>
      </div>
    </section>`;
}

/** How the target is sailed in the day's gusts, below its limits. */
function Aim({ boat, wing, point, reason }) {
  const solved = point.righting_moment_aim_nm != null;
  return html`
    <h3>${t('web.prepare.aim')}</h3>
    ${solved
      ? html`
        <dl class="pairs aim">
          <${Pair} name="boat_speed" value=${`${fixed(point.aim_boat_speed_kn)} kn`} />
          ${point.mode !== 'angle' && html`<${Pair} name="twa" value=${degrees(point.aim_twa_deg, 1)} />`}
          ${['camber', 'twist', 'sheet', 'heel'].map((name) => html`<${Pair} name=${name} value=${degrees(point[`aim_${name}_deg`], 1)} />`)}
          <${Pair} name="righting_moment" value=${`${fixed(point.righting_moment_aim_nm / 1000, 0)} kN m`} />
          <${Pair} name="sheet_load" value=${`${fixed(point.sheet_load_aim_n / 1000, 2)} kN`} />
        </dl>
        <p>${t(point.mode === 'angle' ? 'web.prepare.aim_lost' : 'web.prepare.aim_lost_vmg', { lost: fixed(point.aim_lost_kn, 1) })}
          ${' '}<a href=${addressOf(boat.id, wing.id, atAim(point))} onClick=${follow}>${t('web.prepare.aim_explore')}</a></p>`
      : html`<p>${t('web.prepare.no_aim')}</p>`}
    <p class="quiet">${reason}</p>`;
}

/** What easing a limit by one per cent would gain, where it is more than nothing. */
function gainOf(point, key) {
  const gain = point[`gain_${key}_kn`];
  return gain > 0.0005 ? html` <span class="quiet">${t('web.prepare.gain', { gain: fixed(gain, 3) })}</span>` : '';
}

/** What it costs to be off with each control: alone, and with the righting moment held. */
function Costs({ point }) {
  return html`
    <table class="costs">
      <thead><tr>${['control', 'one', 'alone', 'held'].map((key) => html`<th scope="col">${t(`web.prepare.costs_${key}`)}</th>`)}</tr></thead>
      <tbody>${['camber', 'twist', 'sheet'].map((name) => html`
        <tr>
          <th scope="row">${t(`web.number.${name}`)}</th>
          <td>${point[`${name}_off_one_loss_kn`] > 0 ? `${fixed(point[`${name}_off_one_loss_kn`], 2)} kn` : '-'}</td>
          <td>${point[`${name}_off_one_loss_kn`] > 0 ? degrees(point[`${name}_alone_tenth_deg`], 1) : '-'}</td>
          <td>${fixed(point[`${name}_tenth_low_deg`], 1)} \u2013 ${fixed(point[`${name}_tenth_high_deg`], 1)}</td>
        </tr>`)}
      </tbody>
    </table>
    <p class="quiet">${t('web.prepare.costs_note', { sheet: fixed(point.sheet_per_camber_ratio, 1) })}</p>`;
}

function Figure({ name, value, unit, main }) {
  return html`<div class=${main ? 'main' : ''}><dt>${t(`web.number.${name}`)}</dt><dd>${value}${unit && html` <span class="unit">${unit}</span>`}</dd></div>`;
}

function Pair({ name, value }) {
  return html`<div><dt>${t(`web.number.${name}`)}</dt><dd>${value}</dd></div>`;
}

/** A control's whole range as a bar, the band that costs next to nothing upon it, and the target as a mark. */
function Band({ name, point, low, high }) {
  const value = point[`${name}_deg`];
  const from = point[`${name}_low_deg`];
  const to = point[`${name}_high_deg`];
  const aim = point[`aim_${name}_deg`];
  const place = (deg) => 100 * Math.max(0, Math.min(1, (deg - low) / (high - low)));
  return html`
    <div class="band">
      <span class="band-name">${t(`web.number.${name}`)}</span>
      <svg width="100%" height="16" aria-hidden="true">
        <rect class="range" x="0" y="6" width="100%" height="4" rx="2" />
        <rect class="ridge" x=${`${place(from)}%`} y="3" width=${`${Math.max(0.8, place(to) - place(from))}%`} height="10" rx="3" />
        <svg x=${`${place(value)}%`} overflow="visible"><path class="target" d="M0 0V16" /></svg>
        ${aim !== undefined && html`<svg x=${`${place(aim)}%`} overflow="visible"><path class="aim" d="M0 10l4 6h-8z" /></svg>`}
      </svg>
      <span class="number">${degrees(value, 1)}</span>
      <span class="number quiet">${fixed(from, 1)} \u2013 ${fixed(to, 1)}</span>
    </div>`;
}

function Load({ name, ratio, text, of }) {
  const share = Math.max(0, Math.min(1, ratio));
  return html`
    <div class="band">
      <span class="band-name">${t(`web.number.${name}`)}</span>
      <svg width="100%" height="16" aria-hidden="true">
        <rect class="range" x="0" y="6" width="100%" height="4" rx="2" />
        <rect class="load" x="0" y="3" width=${`${100 * share}%`} height="10" rx="2" />
        <rect class="stop" x="99.3%" y="0" width="0.7%" height="16" />
      </svg>
      <span class="number">${text}</span>
      <span class="number quiet">${of ? t('web.prepare.of', { most: of }) : t('web.prepare.of_limit')}</span>
    </div>`;
}
