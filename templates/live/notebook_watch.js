// Tells the kernel of the notebook's cells as they are put in, moved and deleted. The kernel itself knows only the file
// as it was saved last. JupyterLab and Notebook hand their document to the manager of the widgets; elsewhere nothing is
// told, and the saved file counts.

const REST = 150; // ms: one act of a person may change the list several times

export default {
  render({ model, el }) {
    el.style.display = "none";
    const cells = model.widget_manager?.context?.model?.cells;
    if (!cells?.changed) return;
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
      clearTimeout(waiting);
      cells.changed.disconnect(later);
    };
  },
};
