package trimwright.text;

import java.util.ResourceBundle;

/** The version of the program, written into a resource by the build. */
public final class Version {
    private Version() {}

    public static String get() {
        return ResourceBundle.getBundle("trimwright.text.version").getString("version");
    }
}
