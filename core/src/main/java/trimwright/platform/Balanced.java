package trimwright.platform;

/** A state that satisfies the six equations, with all its loads. */
public record Balanced(Balance balance) implements Equilibrium {
    public SailingState state() {
        return balance.state();
    }
}
