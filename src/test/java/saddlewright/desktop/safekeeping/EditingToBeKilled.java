package saddlewright.desktop.safekeeping;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Instant;
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

  /** A whole desk, which judges the case after each edit; it takes a second to start. */
  static final String DESK = "desk";

  /** Only what keeps and saves the case, called as the desk calls it. */
  static final String KEEPING = "keeping";

  /** What is done to a case. */
  private interface Hands {
    Case current();

    void edit(String name, Case next);

    void undo();

    void redo();

    /** The case has been written to its file. */
    void saved();
  }

  private EditingToBeKilled() {}

  /**
   * Edits a case.
   *
   * @param args folder of the state, the user's file, a seed, {@link #DESK} or {@link #KEEPING},
   *     and after how many edits to end by itself: 0 for never
   */
  public static void main(String[] args) throws Exception {
    Path user = Path.of(args[1]);
    Random chance = new Random(Long.parseLong(args[2]));
    int last = Integer.parseInt(args[4]);
    DeskFile file = new DeskFile();
    Safekeeping safe = new Safekeeping(Path.of(args[0]), r -> {});
    Optional<String> digest = DeskFile.digestOf(user);
    Case first = CaseStore.load(user);
    Hands hands =
        args[3].equals(DESK) ? desk(first, user, file, safe) : keeping(first, user, file, safe);
    file.opened(user, digest);
    PrintStream out = System.out;
    say(out, EDITED, hands);
    for (int n = 1; last == 0 || n <= last; n++) {
      int what = chance.nextInt(20);
      if (what == 0) {
        if (!file.save(hands.current(), user, false)) {
          throw new IllegalStateException("the file was changed by somebody else");
        }
        hands.saved();
        say(out, SAVED, hands);
      } else {
        if (what == 1) {
          hands.undo();
        } else if (what == 2) {
          hands.redo();
        } else {
          hands.edit("Edit " + n, edited(hands.current(), first, n, chance));
        }
        say(out, EDITED, hands);
      }
      // A hand makes no more than some ten edits a second; a drag makes one a frame.
      Thread.sleep(chance.nextInt(30));
    }
  }

  private static Hands desk(Case first, Path user, DeskFile file, Safekeeping safe) {
    Worktable table = new Worktable();
    new DeskJournal(table, file, safe);
    table.lay(first, Optional.of(user));
    return new Hands() {
      @Override
      public Case current() {
        return table.current();
      }

      @Override
      public void edit(String name, Case next) {
        table.apply(name, next);
      }

      @Override
      public void undo() {
        table.undo();
      }

      @Override
      public void redo() {
        table.redo();
      }

      @Override
      public void saved() {
        table.markSaved(user);
      }
    };
  }

  private static Hands keeping(Case first, Path user, DeskFile file, Safekeeping safe) {
    Journal journal = safe.journal(s -> {});
    return new Hands() {
      private Case now = first;
      private Case before = first;

      @Override
      public Case current() {
        return now;
      }

      @Override
      public void edit(String name, Case next) {
        before = now;
        now = next;
        journal.keep(
            new RecoveryCopy(
                next,
                Optional.of(user),
                file.digest(),
                Instant.now(),
                name,
                Optional.empty(),
                false));
      }

      @Override
      public void undo() {
        edit("Undo", before);
      }

      @Override
      public void redo() {
        edit("Redo", before);
      }

      @Override
      public void saved() {
        journal.release();
      }
    };
  }

  private static Case edited(Case c, Case first, int n, Random chance) {
    Case titled = c.withIdentity(c.reference(), "State " + n, c.story());
    Arch arch = Arch.LOWER;
    List<Component> parts = c.design(arch).components();
    return parts.isEmpty() || chance.nextInt(4) == 0
        ? titled.with(first.design(arch))
        : titled.with(c.design(arch).without(parts.get(chance.nextInt(parts.size())).id()));
  }

  private static void say(PrintStream out, String what, Hands hands) {
    out.println(what + " " + System.currentTimeMillis() + " " + hands.current().title());
    out.flush();
  }
}
