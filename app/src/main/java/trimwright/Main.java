package trimwright;

/** Wiring of the program: the only place where parts are put together. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(0);
    }
}
