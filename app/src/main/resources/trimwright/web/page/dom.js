// Preact and htm under one roof: every other module takes html and the hooks from here.
import { h, render } from 'preact';
import htm from 'htm';

export { render };
export { useEffect, useLayoutEffect, useMemo, useRef, useState, useCallback } from 'preact/hooks';
export const html = htm.bind(h);
