package trimwright.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.TestTag;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Counts the tests tagged {@code reference} that ran and notes why others were skipped, for ./verify to print. */
public final class ReferenceCount implements TestExecutionListener {
    private int ran;
    private final Map<String, Integer> skipped = new TreeMap<>();

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        if (!test.isTest() || !test.getTags().contains(TestTag.create("reference"))) {
            return;
        }
        if (result.getStatus() == TestExecutionResult.Status.ABORTED) {
            String reason = result.getThrowable().map(Throwable::getMessage).orElse("no reason given");
            skipped.merge(reason, 1, Integer::sum);
        } else {
            ran++;
        }
    }

    @Override
    public void testPlanExecutionFinished(TestPlan plan) {
        String target = System.getProperty("trimwright.target");
        if (target == null) {
            return;
        }
        try {
            StringBuilder text = new StringBuilder(ran + "\n");
            skipped.forEach((reason, tests) ->
                    text.append(tests).append(' ').append(reason).append('\n'));
            Files.writeString(Path.of(target, "reference-tests.txt"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
