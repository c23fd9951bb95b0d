/** A list whose entries are dragged into another order by their grips, with a mouse, a pen or a finger. */

/** `move` is told by how many places the entry of a name is to go. */
export function bindDrag(list: HTMLElement, move: (slug: string, by: number) => void): void {
  list.addEventListener("pointerdown", (event) => {
    const grip = event.target instanceof Element ? event.target.closest(".grip") : null;
    const item = grip?.closest("li");
    if (!item || event.button !== 0) return;
    event.preventDefault();
    follow(item, event, (by) => move(item.dataset.slug ?? "", by));
  });
}

/** The entry goes with the pointer until that is let go of; what is given up stays where it was. */
function follow(item: HTMLElement, start: PointerEvent, done: (by: number) => void): void {
  const items = [...(item.parentElement?.children ?? [])];
  const middles = items.map(middleOf);
  const from = items.indexOf(item);
  let by = 0;
  const drag = ({ clientY }: PointerEvent) => {
    const way = clientY - start.clientY;
    const place = (middles[from] ?? 0) + way;
    const to = middles.filter((middle, index) => index !== from && middle < place).length;
    by = to - from;
    item.style.transform = `translateY(${way}px)`;
  };
  const end = (event: PointerEvent) => {
    item.removeEventListener("pointermove", drag);
    item.removeEventListener("pointerup", end);
    item.removeEventListener("pointercancel", end);
    item.classList.remove("dragged");
    item.style.removeProperty("transform");
    if (event.type === "pointerup" && by !== 0) done(by);
  };
  item.setPointerCapture(start.pointerId);
  item.classList.add("dragged");
  item.addEventListener("pointermove", drag);
  item.addEventListener("pointerup", end);
  item.addEventListener("pointercancel", end);
}

function middleOf(element: Element): number {
  const { top, height } = element.getBoundingClientRect();
  return top + height / 2;
}
