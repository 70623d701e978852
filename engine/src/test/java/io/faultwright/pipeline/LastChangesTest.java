package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Signed;
import io.faultwright.resolve.Resolver;
import io.faultwright.review.LastChange;
import io.faultwright.review.LastChange.State;
import io.faultwright.revision.GitHistory;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.MergeCommand.FastForwardMode;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.PersonIdent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LastChangesTest {
  private static final String RULES =
      """
      handbook:
        title: Small
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: Made up.
      readings:
        amps: { ask: "What does the fan draw?", unit: A, range: 0 to 5 }
        fan: { ask: "Does the fan run?", values: yes/no }
      faults:
        stands: { title: Fan stands, remedy: [Replace it.], verify: [Look.] }
        tight: { title: Fan is tight, remedy: [Oil it.], verify: [Look.] }
      symptoms:
        warm:
          title: Too warm
          rules:
            low: { when: { fan: no }, conclude: stands, because: So. }
            high: { when: { fan: yes, amps: above 2 A }, conclude: tight, because: So. }
      """;

  @TempDir Path root;

  private Path kb;
  private Git git;
  private int day;

  @BeforeEach
  void begin() throws IOException, GitAPIException {
    kb = root.resolve("rules");
    git = Git.init().setDirectory(root.toFile()).setInitialBranch("main").call();
    commit(RULES, "First rules");
  }

  @AfterEach
  void close() {
    git.close();
  }

  private void write(String rules) throws IOException {
    Files.createDirectories(kb);
    Files.writeString(kb.resolve("handbook.yaml"), rules);
  }

  private void commit(String rules, String message) throws IOException, GitAPIException {
    write(rules);
    git.add().addFilepattern(".").call();
    Instant when = Instant.parse("2026-03-01T12:00:00Z").plus(Duration.ofDays(day++));
    PersonIdent person = new PersonIdent("Trainer", "trainer@example.org", when, ZoneId.of("UTC"));
    git.commit().setMessage(message).setSign(false).setAuthor(person).setCommitter(person).call();
  }

  private LastChange of(String rule) {
    KnowledgeBase now = Resolver.resolve(FolderReader.read(kb));
    return new LastChanges(new GitHistory(kb), now, new Stop(Optional.empty()))
        .of(Signed.rule("warm", rule));
  }

  private static String told(LastChange change) {
    return change.commit().map(one -> one.date() + " " + one.summary()).orElse("")
        + " "
        + change.parts();
  }

  private static String edited() {
    return RULES.replace("above 2 A", "above 3 A");
  }

  @Test
  void aRuleHasTheDateOfItsOwnChange() throws Exception {
    commit(edited(), "A higher limit\n\nMore text");
    assertEquals("2026-03-02 A higher limit [rule warm/high]", told(of("high")));
    assertEquals("2026-03-01 First rules []", told(of("low")));
  }

  @Test
  void whatARuleDependsOnCounts() throws Exception {
    commit(RULES.replace("Oil it.", "Grease it."), "Grease");
    assertEquals("2026-03-02 Grease [fault tight]", told(of("high")));
    assertEquals("2026-03-01 First rules []", told(of("low")));
  }

  @Test
  void anotherLayoutIsNoChange() throws Exception {
    commit(edited(), "A higher limit");
    commit("# a note\n" + edited().replace("\n  warm:", "\n\n  warm:"), "Tidy");
    assertEquals("2026-03-02 A higher limit [rule warm/high]", told(of("high")));
  }

  @Test
  void whatCameBackCameBackThen() throws Exception {
    commit(edited(), "A higher limit");
    commit(RULES, "No, the old one");
    assertEquals("2026-03-03 No, the old one [rule warm/high]", told(of("high")));
  }

  @Test
  void aChangeThatIsNotCommittedIsTold() throws Exception {
    write(edited());
    assertEquals(State.NOT_COMMITTED, of("high").state());
    assertEquals(State.COMMITTED, of("low").state());
  }

  @Test
  void aStateThatCannotBeReadIsPassedOver() throws Exception {
    commit("handbook: [", "Broken");
    commit(RULES, "Mended");
    assertEquals("2026-03-01 First rules []", told(of("high")));
  }

  @Test
  void aMergeLeadsToTheSideTheChangeCameFrom() throws Exception {
    git.checkout().setCreateBranch(true).setName("side").call();
    commit(edited(), "On the side");
    git.checkout().setName("main").call();
    Files.writeString(root.resolve("other.txt"), "Outside of the rules.\n");
    commit(RULES, "Elsewhere");
    git.merge()
        .include(git.getRepository().resolve("side"))
        .setFastForward(FastForwardMode.NO_FF)
        .setMessage("Merge the side")
        .call();
    assertEquals("2026-03-02 On the side [rule warm/high]", told(of("high")));
  }

  @Test
  void timeThatIsOverIsSaid() throws Exception {
    commit(edited(), "A higher limit");
    KnowledgeBase now = Resolver.resolve(FolderReader.read(kb));
    Stop stop = new Stop(Optional.empty());
    stop.now();
    LastChange change =
        new LastChanges(new GitHistory(kb), now, stop).of(Signed.rule("warm", "low"));
    assertEquals(State.BEFORE, change.state());
    assertEquals(List.of(), change.parts());
  }

  @Test
  void withoutARepositoryThereIsNoHistory(@TempDir Path elsewhere) throws Exception {
    Files.writeString(elsewhere.resolve("handbook.yaml"), RULES);
    KnowledgeBase now = Resolver.resolve(FolderReader.read(elsewhere));
    LastChanges changes =
        new LastChanges(new GitHistory(elsewhere), now, new Stop(Optional.empty()));
    assertEquals(LastChange.NO_HISTORY, changes.of(Signed.rule("warm", "low")));
  }
}
