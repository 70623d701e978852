package io.faultwright.render.text;

import io.faultwright.page.BulletinSection;
import io.faultwright.page.BulletinSection.Copies;
import io.faultwright.page.BulletinSection.Machines;
import io.faultwright.page.BulletinSheet;
import io.faultwright.page.ChangedTexts;
import io.faultwright.page.ChangesSection;
import io.faultwright.page.ChangesSection.Change;
import io.faultwright.page.ChangesSection.ChangedComplaint;
import io.faultwright.page.ChangesSection.ChangedSequence;
import io.faultwright.page.ChangesSection.Turn;
import io.faultwright.page.Fact;
import io.faultwright.page.Frame;
import io.faultwright.page.Link;
import io.faultwright.words.Words;
import java.util.List;

/** Prints a bulletin as plain text for a mail. */
public final class BulletinText {
  private static final int IN = 2;
  private static final int FURTHER = 4;
  private static final String ITEM = "  - ";

  private final Frame frame;
  private final Words say;
  private final Lines lines = new Lines();

  /**
   * @param frame head and foot
   */
  public BulletinText(Frame frame) {
    this.frame = frame;
    this.say = Words.of(frame.language());
  }

  /** The bulletin; one call for each printer. */
  public String write(BulletinSheet sheet) {
    BulletinSection it = sheet.content();
    head(say.say("Bulletin"), it.changes().since());
    if (!it.machines().isEmpty()) {
      lines.heading(say.say("For whom"));
      it.machines().forEach(this::machines);
      complaints(it.changes().changed());
    }
    if (!it.reasons().isEmpty()) {
      lines.heading(say.say("Why"));
      it.reasons().forEach(reason -> lines.paragraph(IN, reason));
    }
    copies(it.copies());
    if (!it.cautions().isEmpty()) {
      lines.heading(say.say("Before you work on it"));
      it.cautions().forEach(one -> lines.hanging("  " + one.word() + ": ", one.text()));
    }
    changes(it.changes());
    it.changes().sequences().forEach(this::sequence);
    work(it.changes().work());
    if (!it.texts().isEmpty()) {
      lines.heading(say.say("Said in other words"));
      texts(it.texts());
    }
    return finished();
  }

  /** What stands in for a bulletin where only texts changed; one call for each printer. */
  public String write(ChangedTexts texts) {
    head(say.say("Changed texts"), texts.since());
    lines
        .gap()
        .paragraph(
            0,
            say.say(
                "No bulletin: every situation has the answer it had, and the work is done as"
                    + " before. These texts read differently:"))
        .gap();
    if (texts.items().isEmpty()) {
      lines.paragraph(IN, say.say("None."));
    }
    texts(texts.items());
    return finished();
  }

  private void head(String title, String since) {
    if (frame.draft()) {
      lines
          .paragraph(
              0, say.say("DRAFT") + ": " + say.say("Not released. Not for work on equipment."))
          .gap();
    }
    lines
        .paragraph(0, title)
        .paragraph(0, frame.handbook() + ", " + frame.maker())
        .paragraph(0, frame.edition())
        .paragraph(0, say.say("Since {0}", since));
  }

  private String finished() {
    lines
        .gap()
        .paragraph(0, say.say("Local codes and licensed practice come first."))
        .paragraph(0, frame.disclaimer());
    frame.hotline().ifPresent(line -> lines.paragraph(0, say.say("Hotline") + ": " + line));
    return lines.toString();
  }

  private void machines(Machines one) {
    lines.paragraph(IN, one.family());
    lines.paragraph(FURTHER, String.join(", ", one.models()));
    if (!one.software().isEmpty()) {
      lines.paragraph(
          FURTHER,
          one.every()
              ? say.say("all software: {0}", String.join(", ", one.software()))
              : say.say("only software {0}", String.join(", ", one.software())));
    }
  }

  private void complaints(List<ChangedComplaint> changed) {
    if (!changed.isEmpty()) {
      lines.paragraph(IN, say.say("Complaints") + ":");
      changed.forEach(complaint -> lines.hanging(ITEM, complaint.link().text()));
    }
  }

  private void changes(ChangesSection changes) {
    for (ChangedComplaint complaint : changes.changed()) {
      lines.heading(complaint.link().text());
      facts(say.say("Only where"), complaint.always());
      complaint.changes().forEach(this::change);
      if (complaint.more()) {
        lines.paragraph(
            IN, say.say("And in more situations than can be listed here: work by the new chart."));
      }
    }
    list(say.say("New complaints"), changes.added().stream().map(Link::text).toList());
    list(say.say("Complaints that are gone"), changes.removed());
    if (!changes.equipment().isEmpty()) {
      lines.heading(say.say("Equipment"));
      changes.equipment().forEach(fact -> lines.hanging("  " + fact.label() + ": ", fact.text()));
    }
  }

  private void change(Change change) {
    lines.gap();
    lines.hanging("  " + say.say("Before") + ": ", change.before());
    lines.hanging("  " + say.say("Now") + ": ", change.now());
    for (int i = 0; i < change.where().size(); i++) {
      facts(i == 0 ? say.say("Where") : say.say("Or where"), change.where().get(i));
    }
  }

  private void facts(String label, List<Fact> facts) {
    if (!facts.isEmpty()) {
      lines.paragraph(FURTHER, label);
      facts.forEach(fact -> lines.hanging("      " + fact.label() + ": ", fact.text()));
    }
  }

  private void copies(Copies copies) {
    lines.heading(say.say("Your printed copies"));
    if (copies.none()) {
      lines.paragraph(IN, say.say("All of them are still right."));
      return;
    }
    copies(
        say.say("Throw these away and print them again:"),
        copies.replace().stream().map(Link::text).toList());
    copies(say.say("Throw these away, there is no new one:"), copies.discard());
    copies(say.say("Print these, they are new:"), copies.print().stream().map(Link::text).toList());
    if (!copies.pages().isEmpty()) {
      lines.paragraph(IN, say.say("In a printed handbook these pages read differently:"));
      copies
          .pages()
          .forEach(
              group ->
                  lines.hanging(
                      ITEM,
                      group.titles().stream().allMatch(String::isEmpty)
                          ? group.kind()
                          : group.kind() + ": " + String.join("; ", group.titles())));
    }
    lines.paragraph(IN, say.say("Charts and cards that are not named here are still right."));
  }

  private void copies(String label, List<String> titles) {
    if (!titles.isEmpty()) {
      lines.paragraph(IN, label);
      titles.forEach(title -> lines.hanging(ITEM, title));
    }
  }

  private void list(String heading, List<String> items) {
    if (!items.isEmpty()) {
      lines.heading(heading);
      items.forEach(item -> lines.hanging(ITEM, item));
    }
  }

  private void sequence(ChangedSequence sequence) {
    lines.heading(say.say("Sequence of operation") + ": " + sequence.link().text());
    lines.hanging(
        "  " + say.say("WARNING") + ": ",
        say.say(
            "The machine starts by itself. Watch with the panels on. Isolate and lock out before"
                + " you reach in."));
    sequence.turns().forEach(this::turn);
  }

  private void turn(Turn turn) {
    lines.gap();
    lines.paragraph(IN, turn.what());
    if (!turn.machines().isEmpty()) {
      lines.hanging("    " + say.say("For whom") + ": ", turn.machines());
    }
    if (!turn.before().isEmpty()) {
      lines.hanging("    " + say.say("Before") + ": ", turn.before());
      lines.hanging("    " + say.say("Now") + ": ", turn.now());
    } else if (!turn.now().isEmpty()) {
      lines.paragraph(FURTHER, turn.now());
    }
  }

  private void work(List<ChangesSection.WorkItem> work) {
    if (!work.isEmpty()) {
      lines.heading(say.say("Work that is done differently"));
      lines.paragraph(IN, say.say("Read these again before you work."));
      work.forEach(item -> lines.hanging(ITEM, item.name() + ": " + item.what()));
    }
  }

  private void texts(List<BulletinSection.WorkItem> items) {
    items.forEach(item -> lines.hanging(ITEM, item.name() + ": " + item.what()));
  }
}
