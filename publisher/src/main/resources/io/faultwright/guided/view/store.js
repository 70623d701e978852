// What this device remembers. A browser may refuse; then nothing is remembered and all else works.
(function (fw) {
  "use strict";

  const key = (name) => "faultwright/" + (fw.book ? fw.book.title : "") + "/" + name;

  fw.store = {
    read(name) {
      try {
        return JSON.parse(window.localStorage.getItem(key(name)));
      } catch (refused) {
        return null;
      }
    },

    write(name, value) {
      try {
        window.localStorage.setItem(key(name), JSON.stringify(value));
        return true;
      } catch (refused) {
        return false;
      }
    },

    remove(name) {
      try {
        window.localStorage.removeItem(key(name));
      } catch (refused) {
        // nothing was remembered
      }
    },
  };
})((window.faultwright = window.faultwright || {}));
