/**
 * What leaves the program as words or JSON, shared by commands and pages. Start at {@link trimwright.text.Texts} (every
 * shown sentence) and {@link trimwright.text.JsonOut} (every document). Uses nothing else of the project.
 */
@NullMarked
package trimwright.text;

import org.jspecify.annotations.NullMarked;
