/**
 * The commands. Start at {@link trimwright.cli.CommandRunner} (options that all have, exit codes) and then any
 * {@code ...Command}. The only package that writes to the standard streams; it may use every other package of the
 * program and holds no formula.
 *
 * <p>A new command: a class {@code XCommand implements Callable<Integer>} with a {@link trimwright.cli.CommonOptions}
 * mixin and a {@link trimwright.cli.Console}; its texts in the bundle under {@code trimwright.x.usage.header} and
 * {@code .usage.footer} (an example) and {@code trimwright.x.OPTION}; one line in {@code Main}.
 */
@NullMarked
package trimwright.cli;

import org.jspecify.annotations.NullMarked;
