package trimwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * A command that only has commands below it, as {@code trimwright boat}.
 *
 * @param name the word on the command line
 * @param commands what is below, each annotated for picocli or a group
 */
public record CommandGroup(String name, List<Callable<Integer>> commands) implements Callable<Integer> {
    public CommandGroup {
        commands = List.copyOf(commands);
    }

    @Override
    public Integer call() {
        throw new UserInputException(Texts.of("cli.no_command", name));
    }
}
