// Shows the pages of a handbook that lies in one file, one at a time. The address is `#/page.html#place`.
(function (fw) {
  "use strict";

  const START = "index.html";
  const main = document.getElementById("main");
  const pages = new Map();
  const files = new Map();
  let shown = "";

  document.querySelectorAll("template[data-page]").forEach((page) => pages.set(page.dataset.page, page));
  document.querySelectorAll("script[data-file]").forEach((file) => files.set(file.dataset.file, file.textContent));
  pages.get(START).content.append(...Array.from(main.childNodes, (node) => node.cloneNode(true)));

  /* What the address asks for: {path, fragment}; a place without a page is one of the page that is shown. */
  function asked() {
    const text = location.hash.slice(1) || "/";
    if (!text.startsWith("/")) return { path: shown || START, fragment: location.hash };
    const at = text.indexOf("#");
    const path = decoded((at < 0 ? text : text.slice(0, at)).slice(1).split("?")[0]);
    return { path: pages.has(path) ? path : START, fragment: at < 0 ? "" : text.slice(at) };
  }

  function decoded(text) {
    try {
      return decodeURIComponent(text);
    } catch (broken) {
      return text;
    }
  }

  const address = (path, fragment) => "#/" + path.split("/").map(encodeURIComponent).join("/") + (fragment.length > 1 ? fragment : "");

  /* The file and the place that an address of a page means; null where it leads out of the handbook. */
  function resolved(href) {
    const root = "http://handbook.invalid/";
    const url = new URL(href, root + shown);
    return url.href.startsWith(root) ? { path: decoded(url.pathname.slice(1)) || START, fragment: url.hash } : null;
  }

  /* Makes a link lead within this file. What is not in it, the book for instance, is not offered. */
  function lead(link) {
    const href = link.getAttribute("href");
    if (href.startsWith("#/")) return;
    const place = resolved(href);
    if (!place) return;
    if (pages.has(place.path)) link.setAttribute("href", address(place.path, place.fragment));
    else drop(link);
  }

  function drop(link) {
    const line = link.closest("li, figcaption");
    if (line && line.matches("li") && line.textContent.trim() === link.textContent.trim()) line.remove();
    else if (line && line.matches("figcaption")) link.remove();
    else link.replaceWith(...link.childNodes);
  }

  const leadAll = (part) => part.querySelectorAll("a[href]").forEach(lead);

  /* What a page's scripts listen to ends with the page. */
  const listen = window.addEventListener.bind(window);
  let ends = [];
  window.addEventListener = (type, listener, options) => {
    ends.push(() => window.removeEventListener(type, listener, options));
    listen(type, listener, options);
  };

  function run(path) {
    if (!files.has(path)) return false;
    const script = document.createElement("script");
    script.textContent = files.get(path);
    document.head.append(script);
    script.remove();
    return true;
  }

  function show(path) {
    const page = pages.get(path);
    const first = shown === "";
    ends.forEach((end) => end());
    ends = [];
    shown = path;
    document.title = page.dataset.title;
    if (!first || path !== START) main.replaceChildren(page.content.cloneNode(true));
    leadAll(main);
    page.dataset.scripts.split(" ").filter(Boolean).forEach(run);
    if (!first) main.focus({ preventScroll: true });
  }

  function arrive() {
    const place = asked();
    const turned = place.path !== shown;
    if (turned) show(place.path);
    if (!scrollTo(place.fragment) && turned) window.scrollTo(0, (history.state && history.state.y) || 0);
  }

  function scrollTo(fragment) {
    const target = fragment && document.getElementById(decoded(fragment.slice(1)));
    if (!target) return false;
    for (let box = target.closest("details"); box; box = box.parentElement.closest("details")) box.open = true;
    target.scrollIntoView();
    return true;
  }

  /* Where the page was read to, for the way back. */
  function remember() {
    try {
      history.replaceState({ ...history.state, y: window.scrollY }, "");
    } catch (refused) {
      // then the way back leads to the top
    }
  }

  document.addEventListener("click", (event) => {
    const link = event.target.closest && event.target.closest("a[href]");
    if (!link) return;
    if (link.matches(".skip")) return skip(event);
    lead(link);
    if (link.getAttribute("href") === location.hash) scrollTo(asked().fragment);
    else remember();
  }, true);

  function skip(event) {
    event.preventDefault();
    main.focus();
  }

  /* The same as on a site, where the fragment of the address is the page's alone. */
  fw.here = {
    fragment: () => asked().fragment,
    go: (fragment) => {
      location.hash = address(shown, fragment);
    },
    replace: (fragment) => history.replaceState(history.state, "", address(shown, fragment)),
    open: (href) => {
      const place = resolved(href);
      if (!place) return;
      remember();
      location.hash = address(place.path, place.fragment);
    },
  };

  /* Runs a file of data, as seen from the page; true when it was there. */
  fw.run = (file) => run((resolved(file) || {}).path);

  main.tabIndex = -1;
  shown = START;
  document.querySelectorAll(".head, .foot").forEach(leadAll);
  shown = "";
  listen("hashchange", arrive);
  arrive();
})(window.faultwright = window.faultwright || {});
