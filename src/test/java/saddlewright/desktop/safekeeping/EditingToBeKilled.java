package saddlewright.desktop.safekeeping;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.design.Component;
import saddlewright.desktop.Worktable;

/**
 * A program that edits and saves a case at random, through what the window does it with, and says
 * on standard output after each edit what the case then was; it goes on until it is killed, unless
 * it is told to end.
 */
public final class EditingToBeKilled {
  /** What stands before the time and the title of the case, after each edit and each saving. */
  static final String EDITED = "edited";

  static final String SAVED = "saved";

  private EditingToBeKilled() {}

  /**
   * Edits a case.
   *
   * @param args folder of the state, the user's file, a seed; a fourth has it end by itself
   */
  public static void main(String[] args) throws Exception {
    Path user = Path.of(args[1]);
    Random chance = new Random(Long.parseLong(args[2]));
    PrintStream out = System.out;
    Worktable table = new Worktable();
    DeskFile file = new DeskFile();
    Safekeeping safe = new Safekeeping(Path.of(args[0]), r -> {});
    new DeskJournal(table, file, safe);
    Optional<String> digest = DeskFile.digestOf(user);
    Case first = CaseStore.load(user);
    table.lay(first, Optional.of(user));
    file.opened(user, digest);
    say(out, EDITED, table);
    for (int n = 1; args.length == 3 || n < 100; n++) {
      int what = chance.nextInt(20);
      if (what == 0) {
        if (!file.save(table.current(), user, false)) {
          throw new IllegalStateException("the file was changed by somebody else");
        }
        table.markSaved(user);
        say(out, SAVED, table);
      } else {
        if (what == 1) {
          table.undo();
        } else if (what == 2) {
          table.redo();
        } else {
          table.apply("Edit " + n, edited(table.current(), first, n, chance));
        }
        say(out, EDITED, table);
      }
      // A hand makes no more than some ten edits a second; a drag makes one a frame.
      Thread.sleep(chance.nextInt(30));
    }
  }

  private static Case edited(Case c, Case first, int n, Random chance) {
    Case titled = c.withIdentity(c.reference(), "State " + n, c.story());
    Arch arch = Arch.LOWER;
    List<Component> parts = c.design(arch).components();
    return parts.isEmpty() || chance.nextInt(4) == 0
        ? titled.with(first.design(arch))
        : titled.with(c.design(arch).without(parts.get(chance.nextInt(parts.size())).id()));
  }

  private static void say(PrintStream out, String what, Worktable table) {
    out.println(what + " " + System.currentTimeMillis() + " " + table.current().title());
    out.flush();
  }
}
