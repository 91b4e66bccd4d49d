package trimwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Processor time of an operation (us), all threads of the process together, collector and compiler included. It hardly
 * depends on what else the machine does, as the clock's time does. Use: {@code -prof trimwright.bench.ProcessorTime}.
 */
public final class ProcessorTime implements InternalProfiler {
    private final OperatingSystemMXBean process = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private long before;

    @Override
    public String getDescription() {
        return "Processor time of an operation";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = process.getProcessCpuTime();
    }

    @Override
    public Collection<ScalarResult> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double micros = (process.getProcessCpuTime() - before) / 1e3;
        long operations = Math.max(1, result.getMetadata().getMeasuredOps());
        return List.of(new ScalarResult("processor", micros / operations, "us/op", AggregationPolicy.AVG));
    }
}
