package trimwright.intake;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import trimwright.coursefile.CourseFiles;
import trimwright.store.LibraryWriter;
import trimwright.store.SessionInfo;
import trimwright.store.SourceInfo;

/** A course file that is kept with the sessions of an import, checked before anything is written. */
record CourseSource(LibraryWriter.RawSource source) {
    /** Reads and checks the file; each fault is a line of the exception. */
    static CourseSource read(Path file) {
        byte[] bytes = CourseFiles.bytes(file);
        CourseFiles.parse(bytes, file.toString());
        long lines = new String(bytes, StandardCharsets.UTF_8).lines().count();
        SourceInfo info = new SourceInfo(
                new SourceBytes(file).sha256(),
                String.valueOf(file.getFileName()),
                SourceInfo.COURSE,
                bytes.length,
                lines,
                Map.of(),
                List.of());
        return new CourseSource(new LibraryWriter.RawSource(info, () -> new ByteArrayInputStream(bytes), null));
    }

    /** Whether the session has these bytes already as the course that counts. */
    boolean isLastOf(SessionInfo session) {
        List<SourceInfo> courses = session.sources().stream()
                .filter(info -> info.kind().equals(SourceInfo.COURSE))
                .toList();
        return !courses.isEmpty()
                && courses.get(courses.size() - 1).sha256().equals(source.info().sha256());
    }
}
