/** Pages of the workbench, driven in a real browser against the real server. Start at {@link trimwright.browser.Browser}. */
@NullMarked
package trimwright.browser;

import org.jspecify.annotations.NullMarked;
