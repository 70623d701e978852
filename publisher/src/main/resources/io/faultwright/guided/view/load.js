// Loads data when they are needed: scripts, since a page that is opened from a folder may fetch nothing else.
(function (fw) {
  "use strict";

  function load(file, then) {
    if (fw.run) return then(fw.run(file));
    const script = document.createElement("script");
    script.src = file;
    script.onload = () => then(true);
    script.onerror = () => then(false);
    document.head.append(script);
    return undefined;
  }

  /** Loads data files; `then(true)` when all have come. */
  fw.loadAll = function (files, then) {
    let left = files.length;
    let good = true;
    if (left === 0) then(true);
    files.forEach((file) =>
      load(file, (ok) => {
        good = good && ok;
        left -= 1;
        if (left === 0) then(good);
      }),
    );
  };
})((window.faultwright = window.faultwright || {}));
