package saddlewright.desktop.tools;

import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Arch;
import saddlewright.design.Component;
import saddlewright.design.Unit;
import saddlewright.desktop.Words;

/**
 * Places a component that belongs to the arch as a whole: a dam, relief.
 *
 * @param arch the arch that may have it; empty for both
 * @param part what is placed
 * @param name its name in words
 */
record PlacingTool(Optional<Arch> arch, Component part, String name) implements Tool {
  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    if (arch.isPresent() && arch.get() != aim.arch()) {
      return List.of();
    }
    return Unit.in(now.subject().design(aim.arch()))
        .plus(part)
        .edit()
        .map(
            e ->
                new Proposal(
                    Words.of("edit.place-arch", name, aim.arch().code()),
                    aim.arch(),
                    now.subject().with(aim.arch(), e)))
        .map(List::of)
        .orElse(List.of());
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    return arch.isPresent() && arch.get() != aim.arch()
        ? Optional.of(Reasons.otherArch(name, arch.get()))
        : Reasons.there(now.arch(aim.arch()), c -> c.withId(part.id()).equals(part));
  }
}
