package trimwright.evidence;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Names what a validation test compares with. docs/validation.md lists every one; a test keeps the two together. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface ValidatedAgainst {
    /** Key in docs/sources.md. */
    String source();

    /** Table, equation, page. */
    String where();

    /** In words, with the reason. */
    String tolerance();
}
