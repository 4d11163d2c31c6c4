// Tells the kernel of the notebook's cells as they are put in, moved and deleted. The kernel itself knows only the file
// as it was saved last. JupyterLab and Notebook hand their document to the manager of the widgets; elsewhere nothing is
// told, and the saved file counts. And of the room that the panel's picture has, so that it is lettered for a telephone.

const REST = 150; // ms: one act of a person may change the list several times

export default {
  render({ model, el }) {
    el.style.display = "none";
    const room = new ResizeObserver(([seen]) => {
      const { width, height } = seen.contentRect;
      if (!width || !height) return;
      try {
        model.send({ room: [Math.round(width), Math.round(height)] });
      } catch {
        room.disconnect(); // the kernel is gone, and nobody letters the picture anew
      }
    });
    const see = (left) => {
      const picture = el.closest(".lessonkit-panel")?.querySelector(".lessonkit-picture");
      if (picture) room.observe(picture);
      else if (left) requestAnimationFrame(() => see(left - 1)); // the panel is put together part by part
    };
    see(300);
    const cells = model.widget_manager?.context?.model?.cells;
    if (!cells?.changed) return () => room.disconnect();
    let waiting = 0;
    const tell = () => {
      const code = [];
      for (let i = 0; i < cells.length; i++) {
        const cell = cells.get(i);
        if (cell?.type === "code") code.push([cell.id, cell.sharedModel?.getSource?.() ?? ""]);
      }
      model.send({ cells: code });
    };
    const later = () => {
      clearTimeout(waiting);
      waiting = setTimeout(tell, REST);
    };
    cells.changed.connect(later);
    return () => {
      room.disconnect();
      clearTimeout(waiting);
      cells.changed.disconnect(later);
    };
  },
};
