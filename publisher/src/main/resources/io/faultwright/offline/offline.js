// Lets this device keep the handbook, and tells of a new edition. Nothing changes before somebody says so.
(function (fw) {
  "use strict";

  const own = document.currentScript;
  if (!own || !/^https?:$/.test(location.protocol)) return;

  const root = new URL("./", own.src);
  const workers = navigator.serviceWorker;
  const LATE = 2000;
  const MOST = 8;
  let ready = null;
  let taking = false;
  let notice = null;

  const nothing = () => undefined;

  const known = (text) => (fw.offlineWords || {})[text] || text;

  const say = (text, ...parts) => known(text).replace(/\{(\d)\}/g, (all, index) => (index < parts.length ? String(parts[index]) : all));

  function element(name, text, style) {
    const made = document.createElement(name);
    if (text) made.textContent = text;
    if (style) made.className = style;
    return made;
  }

  function button(text, press) {
    const made = element("button", text);
    made.type = "button";
    made.addEventListener("click", press);
    return made;
  }

  /* A device may refuse to remember; then it is told once more than needed. */
  const key = "faultwright " + root.pathname + " edition";

  function remembered(store) {
    try {
      return window[store].getItem(key);
    } catch (refused) {
      return null;
    }
  }

  function remember(store, name) {
    try {
      window[store].setItem(key, name);
    } catch (refused) {
      // then not
    }
  }

  const inJob = () => Boolean(fw.job && fw.job.isOpen && fw.job.isOpen());

  /* Pages of this handbook in other windows say whether a job is open in them. */
  const windows = "BroadcastChannel" in window ? new BroadcastChannel("faultwright " + root.pathname) : null;
  let heard = nothing;
  if (windows) windows.onmessage = (event) => {
    if (event.data === "job?" && inJob()) windows.postMessage("job");
    if (event.data === "job") heard();
  };

  function jobElsewhere(then) {
    if (!windows) return then(false);
    let busy = false;
    heard = () => {
      busy = true;
    };
    windows.postMessage("job?");
    return setTimeout(() => then(busy), 400);
  }

  /* Puts something at the top of the page, not over it; under a finger nothing moves. */
  function show(parts) {
    const fresh = !notice;
    if (fresh) {
      notice = element("div", "", "edition-notice");
      notice.setAttribute("role", "status");
      document.body.prepend(notice);
    }
    const before = notice.offsetHeight;
    notice.replaceChildren(...parts);
    if (window.scrollY === 0 && performance.now() > LATE && fresh) window.scrollBy(0, notice.offsetHeight - before);
  }

  function hide() {
    if (notice) notice.remove();
    notice = null;
  }

  function changed(changes) {
    if (!changes) return [];
    const lines = changes.changed.map((title) => say("Changed: {0}", title))
      .concat(changes.added.map((title) => say("New: {0}", title)), changes.gone.map((title) => say("No longer in it: {0}", title)), changes.summary);
    if (!lines.length) return [element("p", say("The checks of all complaints are as before."))];
    const more = lines.length - MOST;
    const list = element("ul");
    lines.slice(0, MOST).concat(more > 0 ? [say("and {0} more", more)] : []).forEach((line) => list.append(element("li", line)));
    return [list];
  }

  function buttons(...some) {
    const line = element("p", "", "edition-buttons");
    line.append(...some);
    return line;
  }

  function draw() {
    if (!ready || taking || remembered("sessionStorage") === ready.said.name) return;
    const head = element("p");
    head.append(element("b", say("A new edition is ready: revision {0}.", ready.said.revision)));
    if (inJob()) show([head, element("p", say("You can change to it after this job."))]);
    else show([head, ...changed(ready.said.changes), buttons(button(say("Use it now"), use), button(say("Later"), later))]);
  }

  function later() {
    remember("sessionStorage", ready.said.name);
    hide();
  }

  function use() {
    jobElsewhere((busy) => {
      if (inJob()) draw();
      else if (busy) show([element("p", say("A job is open in another window. Finish it first.")), buttons(button(say("Use it now"), use), button(say("Later"), later))]);
      else take();
    });
  }

  function take() {
    taking = true;
    show([element("p", say("One moment …"))]);
    remember("localStorage", ready.said.name);
    ready.worker.postMessage({ use: true });
  }

  /* Another edition answers from now on: load this page from it if we asked for that, else say so. */
  function replaced() {
    if (taking) {
      taking = false;
      location.reload();
    } else {
      ready = null;
      show([element("p", say("Another window changed to a new edition. This page is still of the old one.")),
        buttons(button(say("Load this page again"), () => location.reload()))]);
    }
  }

  function ask(worker, then) {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event) => then(event.data);
    worker.postMessage({ ask: "edition" }, [channel.port2]);
  }

  /* An edition that took over while no page was open is told of at the next visit. */
  function greet(worker) {
    ask(worker, (said) => {
      const before = remembered("localStorage");
      remember("localStorage", said.name);
      if (!before || before === said.name || ready) return;
      const head = element("p");
      head.append(element("b", say("This is a new edition: revision {0}.", said.revision)));
      show([head, ...changed(said.changes), buttons(button(say("OK"), hide))]);
    });
  }

  function watch(registration) {
    const look = () => {
      const worker = registration.waiting;
      if (worker && registration.active && !taking) ask(worker, (said) => {
        ready = { worker, said };
        draw();
      });
    };
    const follow = (worker) => worker && worker.addEventListener("statechange", look);
    const check = () => registration.update().then(look, nothing);
    registration.addEventListener("updatefound", () => follow(registration.installing));
    follow(registration.installing);
    document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && check());
    window.addEventListener("hashchange", () => setTimeout(draw));
    look();
    check();
    if (registration.active) greet(registration.active);
  }

  /* The folder around this one may hold a handbook too, with a worker of its own. */
  const script = new URL("worker.js", root).href;
  const isOurs = () => Boolean(workers.controller) && workers.controller.scriptURL === script;

  function begin() {
    let controlled = isOurs();
    workers.addEventListener("controllerchange", () => {
      if (!isOurs()) return;
      if (controlled) replaced();
      else greet(workers.controller);
      controlled = true;
    });
    workers.register(script, { scope: root.pathname, updateViaCache: "none" }).then(watch, nothing);
  }

  const manifest = element("link");
  manifest.rel = "manifest";
  manifest.href = new URL("handbook.webmanifest", root).href;
  document.head.append(manifest);
  if (!workers) return;
  if (document.readyState === "complete") begin();
  else window.addEventListener("load", begin);
})(window.faultwright = window.faultwright || {});
