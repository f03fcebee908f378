// A lesson's handout goes to the printer by itself: nothing else of the page is on that paper.

export function handingOut({ ask }) {
  const LESSONS = [1, 7]; // the last one is the page with string and chalk

  return {
    async print(figure) {
      if (figure < LESSONS[0] || figure > LESSONS[1]) return;
      const { html } = await ask({ handout: figure });
      document.getElementById("handout")?.remove();
      const paper = document.createElement("div");
      paper.id = "handout";
      paper.innerHTML = html;
      document.body.append(paper);
      document.documentElement.dataset.handout = "";
      const done = () => {
        paper.remove();
        delete document.documentElement.dataset.handout;
      };
      addEventListener("afterprint", done, { once: true });
      print();
    },
  };
}
