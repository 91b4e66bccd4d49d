/**
 * The workbench: pages in a browser over the same services that the commands use. Start at {@link
 * trimwright.web.Workbench}; each {@link trimwright.web.Routes} is one family of addresses. Holds no formula of the
 * trade: numbers come from {@code prepare}, {@code debrief} and {@code store}, here they are only converted, thinned
 * out for a chart and sent.
 */
@NullMarked
package trimwright.web;

import org.jspecify.annotations.NullMarked;
