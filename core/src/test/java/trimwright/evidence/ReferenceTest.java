package trimwright.evidence;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A test that needs what is no part of the project: shared reference files or a program beside it. It is skipped with a
 * message where these are absent.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Tag("reference")
@Test
public @interface ReferenceTest {}
