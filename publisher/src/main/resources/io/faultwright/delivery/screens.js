// Shows one question at a time. The address says which, so that the back key of a phone works.
(function (fw) {
  "use strict";

  const at = (id) => document.getElementById(id);
  const screens = Array.from(document.querySelectorAll(".screen"));
  const count = fw.quiz.items.length;
  const title = document.title;
  let current = null;
  let changedAt = 0;

  /** A second tap of a glove must not turn the next page, which has just come under it. */
  const isSlip = (event) => event.detail > 1 && window.performance.now() - changedAt < 500;

  const position = () => screens.indexOf(current);
  const go = (step) => (event) => {
    const next = screens[position() + step];
    if (!isSlip(event) && next) window.location.hash = next.id;
  };

  function asked() {
    const wanted = at(window.location.hash.slice(1));
    return screens.includes(wanted) ? wanted : screens[0];
  }

  function show(focus) {
    current = asked();
    changedAt = window.performance.now();
    screens.forEach((screen) => screen.classList.toggle("away", screen !== current));
    const heading = current.querySelector("h2");
    document.title = heading.textContent + " – " + title;
    at("back").disabled = position() === 0;
    at("overview").hidden = position() === screens.length - 1;
    at("next").hidden = position() === screens.length - 1;
    at("next").textContent = position() === screens.length - 2 ? fw.say("To the end") : fw.say("Next");
    fw.refresh();
    if (focus) {
      current.scrollIntoView();
      heading.focus({ preventScroll: true });
    }
  }

  function openWords(open) {
    if (open === 0) return fw.say("Every question is answered.");
    return open === 1
      ? fw.say("1 question is not answered. It counts as wrong.")
      : fw.say("{0} questions are not answered. They count as wrong.", open);
  }

  /** Everything on the page that says how far one has come. */
  fw.refresh = function () {
    const open = fw.open();
    at("progress").value = count - open.length;
    at("answered").textContent = fw.say("{0} of {1} answered", count - open.length, count);
    at("open").textContent = openWords(open.length);
    at("name-shown").textContent = fw.name() || fw.say("No name yet");
    at("state").textContent = fw.isHandedIn() ? fw.say("Nothing has changed since you saved.") : "";
    for (let number = 1; number <= count; number++) {
      const isOpen = open.includes(number);
      at("state-" + number).textContent = isOpen ? fw.say("open") : fw.say("answered");
      at("clear-" + number).hidden = isOpen;
    }
  };

  const choices = (number) => Array.from(document.querySelectorAll("[name='q-" + number + "']"));

  function startQuestion(number) {
    choices(number).forEach((choice) => {
      choice.checked = Number(choice.value) === fw.answer(number);
      choice.addEventListener("change", () => {
        fw.choose(number, Number(choice.value));
        changedElsewhere();
      });
    });
    at("clear-" + number).addEventListener("click", () => {
      choices(number).forEach((choice) => (choice.checked = false));
      fw.choose(number, null);
      changedElsewhere();
      choices(number)[0].focus();
    });
  }

  function changedElsewhere() {
    at("told").textContent = "";
    at("as-text").value = "";
    fw.refresh();
  }

  function startName() {
    at("name").value = fw.name();
    at("name").addEventListener("input", () => {
      fw.setName(at("name").value);
      changedElsewhere();
    });
    at("name").addEventListener("change", () => (at("name").value = fw.name()));
    at("change-name").addEventListener("click", () => {
      window.location.hash = "start";
      window.setTimeout(() => at("name").focus());
    });
  }

  fw.startScreens = function () {
    document.querySelectorAll(".scripted").forEach((part) => (part.hidden = false));
    at("kept").hidden = !fw.remembers;
    at("not-kept").hidden = fw.remembers;
    for (let number = 1; number <= count; number++) startQuestion(number);
    startName();
    at("back").addEventListener("click", go(-1));
    at("next").addEventListener("click", go(1));
    at("quiz").addEventListener("submit", (event) => event.preventDefault());
    window.addEventListener("hashchange", () => show(true));
    show(false);
  };

  fw.startScreens();
  fw.startSending();
})((window.faultwright = window.faultwright || {}));
