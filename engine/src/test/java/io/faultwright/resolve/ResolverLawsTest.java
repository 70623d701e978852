package io.faultwright.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must not matter: line ends, repetition, the order of keys, the files things stand in. */
class ResolverLawsTest {
  private static final int ROUNDS = 60;

  private final KnowledgeBase expected = Resolver.resolve(Knowledge.sources());

  @Test
  void twiceGivesTheSame() {
    assertEquals(expected, Resolver.resolve(Knowledge.sources()));
  }

  @Test
  void lineEndsAndByteOrderMark(@TempDir Path folder) throws IOException {
    for (SourceFile file : Knowledge.sources().files()) {
      Path copy = folder.resolve(file.path());
      Files.createDirectories(copy.getParent());
      Files.writeString(copy, "\uFEFF" + file.text().replace("\n", "\r\n"));
    }
    assertEquals(expected, Resolver.resolve(FolderReader.read(folder)));
  }

  @Test
  void orderOfKeysAndFiles() {
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      KnowledgeBase found = Resolver.resolve(Shuffled.of(Knowledge.sources(), random));
      assertEquals(Normal.of(expected), Normal.of(found), "seed " + seed);
    }
  }
}
