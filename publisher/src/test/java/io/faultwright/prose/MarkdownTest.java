package io.faultwright.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.prose.Prose.Dangling;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownTest {
  private static final Destinations DESTINATIONS =
      new Destinations() {
        @Override
        public Optional<String> page(String kind, String id) {
          return id.equals("known") ? Optional.of("../" + kind + "/known.html") : Optional.empty();
        }

        @Override
        public Optional<String> picture(String path) {
          return path.equals("coil.png") ? Optional.of("coil.png") : Optional.empty();
        }
      };

  private static Prose render(String text) {
    return new Markdown(DESTINATIONS, 2).render(text, "Title", "g-");
  }

  private static String html(String text) {
    return render(text).html().markup();
  }

  @Test
  void shiftsHeadingsAndGivesThemUniqueIds() {
    assertEquals(
        "<h2 id=\"g-hoses\">Hoses</h2>\n<h3 id=\"g-hoses-2\">Hoses</h3>",
        html("# Hoses\n\n## Hoses"));
    assertTrue(html("### Deep").startsWith("<h2"), "the highest heading stands at the top");
    assertTrue(html("# A\n\n###### B").contains("<h6"), "none below the sixth level");
  }

  @Test
  void leavesOutAFirstHeadingThatIsTheTitle() {
    assertEquals("<p>Text.</p>", html("# Title\n\nText."));
  }

  @Test
  void linksToPagesOfTheHandbook() {
    assertEquals("<p><a href=\"../reading/known.html\">it</a></p>", html("[it](reading:known)"));
    assertEquals("<p><a href=\"../guide/known.html\">it</a></p>", html("[it](known.md)"));
    assertEquals("<p><a href=\"../guide/known.html\">it</a></p>", html("[it](sub/known.md)"));
    assertEquals("<h2 id=\"g-a\">A</h2>\n<p><a href=\"#g-a\">it</a></p>", html("# A\n\n[it](#a)"));
  }

  @Test
  void linksToTheWebAndToMail() {
    assertEquals(
        "<p><a href=\"https://example.org/?a=1&amp;b=2\" rel=\"noopener noreferrer\">it</a></p>",
        html("[it](https://example.org/?a=1&b=2)"));
    assertEquals(
        "<p><a href=\"mailto:a@example.org\">a@example.org</a></p>", html("<a@example.org>"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "javascript:alert(1)",
        "JavaScript:alert(1)",
        "java&#115;cript:alert(1)",
        "java&#10;script:alert(1)",
        "data:text/html,x",
        "vbscript:x",
        "file:///etc/passwd",
        "//example.org/x",
        "../../outside.html",
        "reading:unknown",
        "unknown.md",
        "#no-such-heading",
        "https:",
        "http://exa mple.org"
      })
  void followsNoOtherAddress(String target) {
    Prose prose = render("[it](<" + target + ">) and text");
    assertFalse(prose.html().markup().contains("href"), prose.html().markup());
    assertTrue(prose.html().markup().contains("it"), "the words stay");
    assertEquals(1, prose.dangling().size());
  }

  @Test
  void saysWhereALinkThatLeadsNowhereStands() {
    Prose prose = render("One.\n\nTwo 😀 [it](fault:gone), ![a coil](gone.png).");
    assertEquals(
        List.of(new Dangling("fault:gone", 3, 7), new Dangling("gone.png", 3, 25)),
        prose.dangling());
    assertTrue(prose.html().markup().contains("a coil"), "the picture's words stay");
  }

  @Test
  void linksByReferenceAreCheckedToo() {
    Prose prose = render("[it][x] and ![y][p]\n\n[x]: javascript:alert(1)\n[p]: http://x/y.png");
    assertEquals("<p><a>it</a> and y</p>", prose.html().markup());
    assertEquals(2, prose.dangling().size());
  }

  @Test
  void showsPicturesOfTheKnowledgeBaseOnly() {
    assertEquals(
        "<p><img src=\"coil.png\" alt=\"a &quot;coil&quot;\" /></p>",
        html("![a \"coil\"](coil.png)"));
  }

  @Test
  void addressesMayHoldSpaces() {
    assertEquals(1, render("![A coil](<a coil.png>)").dangling().size());
    assertEquals("<p>(a) [b] c</p>", html("(a) [b] c"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "text <b onclick=\"x\">bold</b>",
        "<!-- comment -->",
        "<?php x ?>",
        "<svg><script>1</script></svg>",
        "<style>*{}</style>"
      })
  void printsRawMarkupAsText(String raw) {
    String html = html(raw);
    assertFalse(html.replaceAll("</?p>", "").contains("<"), html);
  }

  @Test
  void runsNothingFromOtherLanguages() {
    String text = "${7+7} <#assign x=1> {{ 7+7 }} #{7+7}";
    assertTrue(html(text).contains("${7+7} &lt;#assign x=1&gt; {{ 7+7 }} #{7+7}"), html(text));
  }

  @Test
  void makesTables() {
    String html = html("| a | b |\n|---|--:|\n| 1 | 2 |");
    assertTrue(html.contains("<th class=\"align-right\">b</th>"), html);
    assertFalse(html.contains("align=\""), html);
  }

  @Test
  void replacesWhatXmlCannotCarry() {
    assertEquals("<p>a\uFFFDb</p>", html("a\u0001b"));
  }
}
