package io.faultwright.docs;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.TestFactory;

/** The pages for trainers, reviewers and those who teach show what the tool really does. */
class GuideExamplesTest {
  @TestFactory
  Stream<DynamicContainer> examples() {
    return Stream.of("trainer.md", "reviewer.md", "teaching.md")
        .map(
            name ->
                DynamicContainer.dynamicContainer(
                    name, Examples.tests(MarkdownPage.read(Stored.DOCS.resolve(name)))));
  }
}
