package trimwright.call;

/** What a call asks for. All of them are the wing trimmer's. */
public enum CallKind {
    /** Carry more moment; never while its interval reaches over the aim. */
    POWER_UP,
    /** Carry less moment. */
    EASE,
    CAMBER_MORE,
    CAMBER_LESS,
    TWIST_MORE,
    TWIST_LESS;

    /** Whether following it makes the wing carry more moment, as long as nothing else is touched. */
    public boolean raisesMoment() {
        return this == POWER_UP || this == CAMBER_MORE || this == TWIST_LESS;
    }
}
