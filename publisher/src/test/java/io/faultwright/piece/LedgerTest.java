package io.faultwright.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerTest {
  private static final Fingerprint PROGRAM = new Fingerprint("01");
  private static final Fingerprint INPUTS = new Fingerprint("02");
  private static final byte[] CONTENT = "chart".getBytes(StandardCharsets.UTF_8);
  private static final List<String> NOTES = List.of("", "a\tb\\n\nc", "");

  @TempDir Path folder;

  @BeforeEach
  void publish() throws IOException {
    write("a.svg", "a.svg");
  }

  /** A ledger that speaks of one path, beside a file of another or the same. */
  private void write(String told, String written) throws IOException {
    Entry entry = Entry.of("charts", INPUTS, Made.of(told, CONTENT, NOTES));
    Files.write(folder.resolve(written), CONTENT);
    Files.write(folder.resolve(Ledger.NAME), Ledger.bytes(PROGRAM, List.of(entry)));
  }

  private Optional<Made> find(Fingerprint program, Fingerprint inputs) {
    return Ledger.read(folder, program).find("charts", inputs);
  }

  @Test
  void whatIsMadeFromTheSameIsFoundWithItsNotes() {
    assertEquals(NOTES, find(PROGRAM, INPUTS).orElseThrow().notes());
  }

  @Test
  void anotherProgramBelievesNothing() {
    assertTrue(Ledger.read(folder, PROGRAM).has("charts", INPUTS));
    assertFalse(Ledger.read(folder, INPUTS).has("charts", INPUTS));
    assertTrue(find(INPUTS, INPUTS).isEmpty());
  }

  @Test
  void otherInputsAreNotFound() {
    assertTrue(find(PROGRAM, PROGRAM).isEmpty());
  }

  @Test
  void whatIsKeptStandsWhereItStood() throws IOException {
    FileContent kept = find(PROGRAM, INPUTS).orElseThrow().files().get("a.svg");
    assertEquals(Optional.of(folder.resolve("a.svg")), kept.standsAt());
    assertEquals("chart", new String(kept.bytes(), StandardCharsets.UTF_8));
    assertEquals(FileContent.of(CONTENT).sum(), kept.sum());
  }

  @Test
  void aFileThatIsNotAsItWasIsNotFound() throws IOException {
    Files.writeString(folder.resolve("a.svg"), "chars");
    assertTrue(find(PROGRAM, INPUTS).isEmpty());
    Files.delete(folder.resolve("a.svg"));
    assertTrue(find(PROGRAM, INPUTS).isEmpty());
  }

  @Test
  void aFileOutsideTheFolderIsNotTaken() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    write("../a.svg", "a.svg");
    Files.move(folder.resolve(Ledger.NAME), inner.resolve(Ledger.NAME));
    assertTrue(Ledger.read(inner, PROGRAM).find("charts", INPUTS).isEmpty());
  }

  @Test
  void everyByteOfTheLedgerCounts() throws IOException {
    byte[] ledger = Files.readAllBytes(folder.resolve(Ledger.NAME));
    for (int i = 0; i < ledger.length; i++) {
      byte[] damaged = ledger.clone();
      damaged[i] ^= 1;
      Files.write(folder.resolve(Ledger.NAME), damaged);
      assertFalse(Ledger.read(folder, PROGRAM).has("charts", INPUTS), "byte " + i);
    }
  }
}
