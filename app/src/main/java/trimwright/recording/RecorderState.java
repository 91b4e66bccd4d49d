package trimwright.recording;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the recording stands.
 *
 * @param bytes kept so far
 * @param lost bytes that the disk refused since it last took some
 * @param fault why it refuses, or null while all is well
 * @param inputs one for each address
 */
public record RecorderState(long bytes, long lost, @Nullable String fault, List<InputInfo> inputs) {
    public RecorderState {
        inputs = List.copyOf(inputs);
    }

    /**
     * One input.
     *
     * @param reason why it stands so, may be empty
     */
    public record InputInfo(InputAddress address, InputState state, String reason) {}
}
