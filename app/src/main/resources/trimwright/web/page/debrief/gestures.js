// Mouse, wheel, touch and keys on anything whose width is the time that is shown.

/**
 * Binds them to an element.
 * @param {HTMLElement} element
 * @param {{view: any, left: number, right: number}} place plot margins in pixels
 * @returns {() => void} unbinds
 */
export function bindGestures(element, { view, left, right }) {
  const timeAt = (event) => {
    const frame = element.getBoundingClientRect();
    const share = (event.clientX - frame.left - left) / (frame.width - left - right);
    const { from, to } = view.get();
    return from + Math.max(0, Math.min(1, share)) * (to - from);
  };
  const width = () => element.getBoundingClientRect().width - left - right;
  const held = new Map();

  const listeners = {
    wheel(event) {
      if (event.ctrlKey) return;
      event.preventDefault();
      const sideways = event.shiftKey ? event.deltaY : event.deltaX;
      if (Math.abs(sideways) > Math.abs(event.shiftKey ? 0 : event.deltaY)) view.pan(sideways / width());
      else view.zoom(Math.exp(Math.max(-0.6, Math.min(0.6, event.deltaY * 0.0022))), timeAt(event));
    },
    pointerdown(event) {
      if (event.button !== 0) return;
      element.setPointerCapture(event.pointerId);
      held.set(event.pointerId, event.clientX);
      element.classList.add('dragging');
    },
    pointermove(event) {
      if (!held.has(event.pointerId)) {
        view.point(timeAt(event));
        return;
      }
      if (held.size === 2) {
        const before = spread(held);
        held.set(event.pointerId, event.clientX);
        const after = spread(held);
        if (after.width > 10) view.zoom(before.width / after.width);
      } else {
        view.pan((held.get(event.pointerId) - event.clientX) / width());
        held.set(event.pointerId, event.clientX);
      }
    },
    pointerup: release,
    pointercancel: release,
    pointerleave() {
      if (!held.size) view.point(null);
    },
    dblclick: () => view.all(),
    keydown(event) {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const { cursor } = view.get();
      const act = {
        ArrowLeft: () => view.pan(-0.2),
        ArrowRight: () => view.pan(0.2),
        PageUp: () => view.pan(-0.9),
        PageDown: () => view.pan(0.9),
        ArrowUp: () => view.zoom(1 / 1.5, cursor),
        ArrowDown: () => view.zoom(1.5, cursor),
        '+': () => view.zoom(1 / 1.5, cursor),
        '=': () => view.zoom(1 / 1.5, cursor),
        '-': () => view.zoom(1.5, cursor),
        0: () => view.all(),
        Home: () => view.all(),
        ',': () => stepCursor(-1),
        '.': () => stepCursor(1),
      }[event.key];
      if (act) {
        event.preventDefault();
        act();
      }
    },
  };

  function stepCursor(direction) {
    const { from, to, cursor } = view.get();
    const step = (to - from) / 200;
    view.point(Math.max(from, Math.min(to, (cursor ?? (from + to) / 2) + direction * step)));
  }

  function release(event) {
    held.delete(event.pointerId);
    if (!held.size) element.classList.remove('dragging');
  }

  for (const [name, listener] of Object.entries(listeners)) element.addEventListener(name, listener, { passive: false });
  return () => {
    for (const [name, listener] of Object.entries(listeners)) element.removeEventListener(name, listener);
  };
}

function spread(held) {
  const [a, b] = [...held.values()];
  return { width: Math.abs(a - b) };
}
