package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.ambiguity.Prospect;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Status;
import io.faultwright.run.Verdict;
import io.faultwright.wording.SampleBase;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ProspectOutputTest {
  private static final KnowledgeBase BASE = SampleBase.build();

  @Test
  void peopleReadWhatIsOpenAndWhatToReadNext() {
    Golden.check(
        "prospect.txt",
        text(SampleDistinctions.prospect(), Status.NOTHING_YET)
            + "\n"
            + text(SampleDistinctions.nothing(), Status.TAKE_AGAIN));
  }

  private static String text(Prospect prospect, Status status) {
    return new ProspectText(BASE, Ink.PLAIN).write(prospect, verdict(status));
  }

  private static Verdict verdict(Status status) {
    return new Verdict(status, new TreeSet<>(), false);
  }

  @Test
  void machinesReadTheSame() throws Exception {
    String written =
        new ProspectJson(BASE).write(SampleDistinctions.prospect(), verdict(Status.NOTHING_YET));
    Golden.check("prospect.json", written);
    JsonNode first = new ObjectMapper().readTree(written).get("next").get(0);
    assertEquals(33.333333, first.get("expected").get("weighted").asDouble());
  }
}
