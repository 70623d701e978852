// Saves, shares and copies what is handed in.
(function (fw) {
  "use strict";

  const at = (id) => document.getElementById(id);
  const told = (text) => (at("told").textContent = text);
  const file = (text, type) => new File([text], fw.fileName, { type });

  /** Nobody can grade what has no name. */
  function withName(send) {
    return () => {
      if (!fw.name()) {
        told(fw.say("Write your name first."));
        at("change-name").focus();
        return;
      }
      const text = fw.handIn();
      at("as-text").value = text;
      fw.refresh();
      send(text);
    };
  }

  function save(text) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(file(text, "application/json"));
    link.download = fw.fileName;
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(link.href), 60000);
    told(fw.say("Saved as {0}. Now send this file to your trainer.", fw.fileName));
  }

  let onlyText = false;

  /** What the device can pass on: the file, or else its text. */
  function shareable(text) {
    const whole = { files: [file(text, "application/json")] };
    const takesFiles = !onlyText && navigator.canShare && navigator.canShare(whole);
    return takesFiles ? whole : { title: fw.fileName, text };
  }

  /** Some browsers say that they take the file, and then refuse it; each try needs a press of its own. */
  function refused() {
    told(
      onlyText
        ? fw.say("That did not work. Save the answers instead.")
        : fw.say("This device does not take the file. Press once more to share its text."),
    );
    onlyText = true;
  }

  function share(text) {
    navigator.share(shareable(text)).then(
      () => told(fw.say("Handed to another program. See that it arrives.")),
      (trouble) => (trouble.name === "AbortError" ? told("") : refused()),
    );
  }

  function copy(text) {
    const copied = () => told(fw.say("Copied. Paste it into a message to your trainer."));
    const byHand = () => {
      at("by-hand").open = true;
      at("as-text").select();
      told(fw.say("Copy the text below into a message to your trainer."));
    };
    if (navigator.clipboard) navigator.clipboard.writeText(text).then(copied, byHand);
    else byHand();
  }

  function forget() {
    if (!window.confirm(fw.say("Forget all answers on this device? What you have not saved is lost."))) return;
    fw.forget();
    window.location.replace(window.location.pathname + "#start");
    window.location.reload();
  }

  fw.startSending = function () {
    at("save").addEventListener("click", withName(save));
    at("copy").addEventListener("click", withName(copy));
    at("share").hidden = !navigator.share;
    at("share").addEventListener("click", withName(share));
    at("forget").addEventListener("click", forget);
  };
})((window.faultwright = window.faultwright || {}));
