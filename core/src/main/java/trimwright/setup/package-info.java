/**
 * Choice of the setup for a race: what a wing and a crew may be expected to take for a course in the wind of a forecast, and how
 * likely a gust passes a limit. Start at {@link trimwright.setup.RaceOutlook}; equations in docs/theory/setup.md. Uses target
 * books, gust cards and the spectra of {@code weather}. SI and radians.
 */
@NullMarked
package trimwright.setup;

import org.jspecify.annotations.NullMarked;
