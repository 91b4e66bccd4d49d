// One drill being sailed: frames come from the server, what the hands do goes to it. No physics here.
import { query } from '../api.js';

/** Frames are drawn this long after they came, so that there is one on each side (ms). */
const BEHIND = 60;

/** Keys that do not change evenly between two frames. */
const STEPS = new Set(['tack', 'side', 'turn', 'hull_touched', 'slides']);
const ROUND = new Set(['heading_deg', 'awa_deg', 'twa_deg']);

export function createSail(setup, hands, { over, failed }) {
  const address = `${location.protocol === 'https:' ? 'wss' : 'ws'}://${location.host}/ws/practice${query(setup)}`;
  const socket = new WebSocket(address);
  const frames = [];
  const trace = [];
  let done = false;
  let sent = '';
  socket.onmessage = ({ data }) => {
    const message = JSON.parse(data);
    if (message.result) {
      done = true;
      over(message.result);
      return;
    }
    frames.push({ at: performance.now(), frame: message });
    if (frames.length > 8) frames.shift();
    if (message.time_s >= 0 && (trace.length === 0 || message.time_s - trace[trace.length - 1][0] >= 0.2)) trace.push([message.time_s, message.lost_s]);
    tell();
  };
  socket.onopen = tell;
  socket.onclose = ({ reason }) => {
    if (!done) failed(reason);
    done = true;
  };

  function tell() {
    if (socket.readyState !== WebSocket.OPEN) return;
    const now = JSON.stringify(hands.now());
    if (now !== sent) socket.send(now);
    sent = now;
  }

  return {
    trace,
    tell,
    /** The boat as she is to be drawn now, or null before the first frame. */
    frame() {
      if (frames.length === 0) return null;
      const at = performance.now() - BEHIND;
      let next = frames.findIndex((one) => one.at > at);
      if (next < 0) return frames[frames.length - 1].frame;
      if (next === 0) return frames[0].frame;
      const [a, b] = [frames[next - 1], frames[next]];
      return between(a.frame, b.frame, (at - a.at) / (b.at - a.at));
    },
    pause(paused) {
      if (socket.readyState === WebSocket.OPEN) socket.send(JSON.stringify({ pause: paused }));
    },
    stop() {
      done = true;
      socket.close();
    },
  };
}

function between(a, b, share) {
  const frame = {};
  for (const key of Object.keys(b)) {
    if (STEPS.has(key) || typeof b[key] !== 'number') frame[key] = b[key];
    else if (ROUND.has(key)) frame[key] = a[key] + share * (((b[key] - a[key] + 540) % 360) - 180);
    else frame[key] = a[key] + share * (b[key] - a[key]);
  }
  return frame;
}
