/**
 * What is computed before sailing, as documents that commands and pages share: start at
 * {@link trimwright.prepare.TargetRun}. Composes core; holds no formula of its own.
 */
@NullMarked
package trimwright.prepare;

import org.jspecify.annotations.NullMarked;
