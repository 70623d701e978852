// Shows the pages of a session one by one. Without it they stand one below the other.
(function () {
  "use strict";

  var leaves = Array.prototype.slice.call(document.querySelectorAll(".leaf"));
  var back = document.getElementById("back");
  var on = document.getElementById("on");
  var where = document.getElementById("where");
  var all = document.getElementById("all");
  var key = "faultwright lesson " + document.body.dataset.lesson;
  var shown = -1;

  // Where a browser keeps nothing, the session begins at its first page.
  function kept() {
    try {
      return parseInt(localStorage.getItem(key), 10) || 1;
    } catch (none) {
      return 1;
    }
  }

  function keep(number) {
    try {
      localStorage.setItem(key, String(number));
    } catch (none) {
      return;
    }
  }

  // The page that an address leads to: its own, or the one that has the place.
  function asked() {
    var place = document.getElementById(location.hash.slice(1));
    return place ? leaves.indexOf(place.closest(".leaf")) + 1 : 0;
  }

  function show(number, focus) {
    var next = Math.max(0, Math.min(leaves.length - 1, number - 1));
    if (next === shown) return;
    shown = next;
    leaves.forEach(function (leaf, i) {
      leaf.hidden = i !== shown;
    });
    back.disabled = shown === 0;
    on.disabled = shown === leaves.length - 1;
    where.textContent = where.dataset.of
      .replace("{0}", String(shown + 1))
      .replace("{1}", String(leaves.length));
    keep(shown + 1);
    history.replaceState(null, "", "#page-" + (shown + 1));
    scrollTo(0, 0);
    // On a chart that is larger than its frame, the node at which the way stands is looked at.
    var here = leaves[shown].querySelector(".node.here");
    if (here) {
      var sheet = here.closest(".sheet");
      var place = here.getBoundingClientRect();
      var frame = sheet.getBoundingClientRect();
      sheet.scrollTop += place.bottom - frame.top - 0.75 * frame.height;
      sheet.scrollLeft += place.left + place.width / 2 - frame.left - frame.width / 2;
    }
    if (focus) leaves[shown].focus({ preventScroll: true });
  }

  function turn(by) {
    show(shown + 1 + by, true);
  }

  /** Looks further down or up a chart that is larger than its frame; false where it has no more. */
  function looked(by) {
    var sheet = leaves[shown].querySelector(".sheet");
    if (!sheet) return false;
    var before = sheet.scrollTop;
    sheet.scrollTop += by * 0.5 * sheet.clientHeight;
    return sheet.scrollTop !== before;
  }

  function keyed(event) {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    var target = event.target;
    var own = target.closest("button, summary, a, .sheet");
    var forward = document.documentElement.dir === "rtl" ? "ArrowLeft" : "ArrowRight";
    var backward = forward === "ArrowRight" ? "ArrowLeft" : "ArrowRight";
    var step = 0;
    if (event.key === forward || event.key === "PageDown") step = 1;
    if (event.key === backward || event.key === "PageUp") step = -1;
    if (event.key === " " && !own) step = event.shiftKey ? -1 : 1;
    if (event.key === "Home") step = -leaves.length;
    if (event.key === "End") step = leaves.length;
    if (event.key === "Escape") all.open = false;
    if (!own && (event.key === "ArrowDown" || event.key === "ArrowUp")) {
      if (looked(event.key === "ArrowDown" ? 1 : -1)) event.preventDefault();
    }
    if (step === 0) return;
    event.preventDefault();
    turn(step);
  }

  document.documentElement.classList.add("one-by-one");
  back.hidden = false;
  on.hidden = false;
  back.addEventListener("click", function () {
    turn(-1);
  });
  on.addEventListener("click", function () {
    turn(1);
  });
  all.addEventListener("click", function (event) {
    if (event.target.closest("a")) all.open = false;
  });
  addEventListener("keydown", keyed);
  addEventListener("hashchange", function () {
    if (asked()) show(asked(), true);
  });
  show(asked() || kept(), false);
})();
