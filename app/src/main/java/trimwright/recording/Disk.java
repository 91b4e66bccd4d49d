package trimwright.recording;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** The file that a journal is written to. */
interface Disk extends Closeable {
    /** Writes all of it behind what is there. */
    void append(byte[] bytes) throws IOException;

    /** Returns when what was appended is on the disk. */
    void force() throws IOException;

    /** Cuts off what lies behind. */
    void truncate(long length) throws IOException;

    /** A file that nobody else may write while it is open; null where another program writes it. */
    static @Nullable Disk lock(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            lock = null;
        }
        if (lock == null) {
            channel.close();
            return null;
        }
        channel.position(channel.size());
        return new Disk() {
            @Override
            public void append(byte[] bytes) throws IOException {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
            }

            @Override
            public void force() throws IOException {
                channel.force(false);
            }

            @Override
            public void truncate(long length) throws IOException {
                channel.truncate(length);
                channel.position(length);
            }

            @Override
            public void close() throws IOException {
                // Closing gives the lock back.
                channel.close();
            }
        };
    }
}
