// Draws the flow sheet that a page gives as JSON: elkjs finds the places and the ways, the shapes are drawn here as SVG.
(() => {
  "use strict";
  const frame = document.getElementById("flow");
  const given = document.getElementById("flow-data");
  if (!frame || !given || typeof ELK === "undefined") return;

  const drawing = JSON.parse(given.textContent);
  const pad = 9, titleHeight = 24, lineHeight = 15, rowHeight = 16;
  const pen = document.createElement("canvas").getContext("2d");
  const wide = (text, font) => { pen.font = font; return pen.measureText(text).width; };
  const body = "12px system-ui, 'Segoe UI', 'Noto Sans', 'DejaVu Sans', sans-serif", bold = "bold 15px system-ui, 'Segoe UI', 'Noto Sans', 'DejaVu Sans', sans-serif";

  const svg = (name, attributes = {}, text) => {
    const element = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    if (text !== undefined) element.textContent = text;
    return element;
  };

  // Codes hold no blanks, so that one with a blank behind it names an outlet and no other box.
  // A box: a title, its lines, then one row for each outlet; ways leave the row to the right and enter at the title from the left.
  const sized = node => {
    const title = wide(node.id, bold) + 12 + wide(node.word, body);
    const width = Math.ceil(Math.max(title, ...[...node.lines, ...node.outlets].map(t => wide(t, body))) * 1.06 + 2 * pad + (node.shape === "product" ? 10 : 0));
    const rowsFrom = titleHeight + node.lines.length * lineHeight + (node.outlets.length > 0 ? 4 : 0) + (node.shape === "purifying" || node.shape === "finishing" ? 6 : 0);
    return { ...node, width, rowsFrom, height: rowsFrom + node.outlets.length * rowHeight + 6 };
  };

  const boxes = new Map(drawing.nodes.map(n => [n.id, sized(n)]));
  const graph = {
    id: "the sheet",
    layoutOptions: {
      "elk.algorithm": "layered", "elk.direction": "RIGHT", "elk.edgeRouting": "ORTHOGONAL", "elk.spacing.nodeNode": "22", "elk.spacing.edgeEdge": "7", "elk.spacing.edgeNode": "10",
      "elk.layered.spacing.nodeNodeBetweenLayers": "34", "elk.layered.spacing.edgeEdgeBetweenLayers": "7", "elk.layered.spacing.edgeNodeBetweenLayers": "14", "elk.layered.nodePlacement.strategy": "NETWORK_SIMPLEX", "elk.layered.compaction.postCompaction.strategy": "EDGE_LENGTH",
    },
    children: [...boxes.values()].map(b => ({
      id: b.id, width: b.width, height: b.height, layoutOptions: { "elk.portConstraints": "FIXED_POS" },
      ports: [
        { id: `${b.id} in`, x: 0, y: titleHeight / 2 + 2, width: 0, height: 0, layoutOptions: { "elk.port.side": "WEST" } },
        ...b.outlets.map((_, i) => ({ id: `${b.id} ${i}`, x: b.width, y: b.rowsFrom + (i + 0.5) * rowHeight, width: 0, height: 0, layoutOptions: { "elk.port.side": "EAST" } })),
      ],
    })),
    edges: drawing.edges.map((e, i) => ({ id: `way, ${i}`, sources: [`${e.from} ${e.outlet}`], targets: [`${e.to} in`] })),
  };

  const outline = {
    break: (w, h) => `M0 0H${w}V${h}H0Z`,
    sizing: (w, h) => `M9 0H${w - 9}L${w} 9V${h - 9}L${w - 9} ${h}H9L0 ${h - 9}V9Z`,
    reduction: (w, h) => `M11 0H${w - 11}A11 11 0 0 1 ${w} 11V${h - 11}A11 11 0 0 1 ${w - 11} ${h}H11A11 11 0 0 1 0 ${h - 11}V11A11 11 0 0 1 11 0Z`,
    purifying: (w, h) => `M0 0L${w / 2} -9L${w} 0V${h}H0Z`,
    finishing: (w, h) => `M0 3Q${w / 2} -8 ${w} 3V${h - 3}Q${w / 2} ${h + 8} 0 ${h - 3}Z`,
    grading: (w, h) => `M0 0H${w}V${h}H0ZM4 4H${w - 4}V${h - 4}H4Z`,
    product: (w, h) => { const r = Math.min(h / 2, 15); return `M${r} 0H${w - r}A${r} ${r} 0 0 1 ${w} ${r}V${h - r}A${r} ${r} 0 0 1 ${w - r} ${h}H${r}A${r} ${r} 0 0 1 0 ${h - r}V${r}A${r} ${r} 0 0 1 ${r} 0Z`; },
  };

  const drawnBox = (box, x, y) => {
    const group = svg(box.href ? "a" : "g", { transform: `translate(${x} ${y})`, class: `flow-box ${box.shape}`, "data-code": box.id });
    // A link is read out by its texts, each parted from the next; what is no link by its title alone.
    if (box.href) group.setAttribute("href", box.href);
    else { group.setAttribute("aria-label", box.title); group.setAttribute("role", "img"); }
    group.append(svg("title", {}, box.title), svg("path", { d: outline[box.shape](box.width, box.height), class: "flow-outline" }));
    const from = box.shape === "product" ? pad + 5 : pad;
    group.append(svg("text", { x: from, y: 18, class: "flow-code" }, `${box.id} `), svg("text", { x: box.width - from, y: 17, class: "flow-word" }, `${box.word} `));
    box.lines.forEach((line, i) => group.append(svg("text", { x: from, y: titleHeight + i * lineHeight + 11, class: "flow-line" }, `${line} `)));
    box.outlets.forEach((outlet, i) => {
      const top = box.rowsFrom + i * rowHeight;
      if (i === 0) group.append(svg("path", { d: `M${pad} ${top}H${box.width - pad}`, class: "flow-rule" }));
      group.append(svg("text", { x: box.width - pad, y: top + 12, class: "flow-outlet" }, `${outlet} `));
    });
    return group;
  };

  const most = Math.max(0, ...drawing.edges.map(e => e.weight ?? 0));
  const breadth = edge => edge.weight == null || most === 0 ? 1.4 : 0.8 + 6 * edge.weight / most;

  const drawnWay = (edge, section) => {
    const points = [section.startPoint, ...(section.bendPoints ?? []), section.endPoint];
    const end = points[points.length - 1], half = breadth(edge) / 2 + 3.2;
    const group = svg("g", { class: "flow-way", "data-from": edge.from, "data-to": edge.to });
    group.append(svg("title", {}, edge.title),
      svg("path", { d: points.map((p, i) => `${i === 0 ? "M" : "L"}${p.x} ${p.y}`).join(""), class: "flow-line", "stroke-width": breadth(edge) }),
      svg("path", { d: `M${end.x} ${end.y}l-8 ${-half}v${2 * half}Z`, class: "flow-head" }));
    return group;
  };

  const show = placed => {
    const picture = svg("svg", { viewBox: `-12 -12 ${placed.width + 24} ${placed.height + 24}`, role: "group", "aria-label": frame.dataset.title });
    const ways = svg("g", { class: "flow-ways" });
    placed.edges.forEach((e, i) => e.sections.forEach(s => ways.append(drawnWay(drawing.edges[i], s))));
    const all = svg("g", { class: "flow-boxes" });
    placed.children.forEach(c => all.append(drawnBox(boxes.get(c.id), c.x, c.y)));
    picture.append(ways, all);

    // What belongs to the box that is pointed at stands out.
    const look = code => {
      picture.classList.toggle("looking", code !== null);
      const near = new Set([code]);
      ways.querySelectorAll(".flow-way").forEach(way => {
        const lit = code !== null && (way.dataset.from === code || way.dataset.to === code);
        way.classList.toggle("lit", lit);
        if (lit) { near.add(way.dataset.from); near.add(way.dataset.to); ways.append(way); }
      });
      all.querySelectorAll(".flow-box").forEach(box => box.classList.toggle("lit", near.has(box.dataset.code)));
    };
    const codeOf = event => event.target.closest?.(".flow-box")?.dataset.code ?? null;
    all.addEventListener("pointerover", event => look(codeOf(event)));
    all.addEventListener("pointerout", () => look(null));
    all.addEventListener("focusin", event => look(codeOf(event)));
    all.addEventListener("focusout", () => look(null));

    let scale = 1;
    const whole = () => frame.clientWidth / (placed.width + 24);
    const zoom = to => {
      const middle = (frame.scrollLeft + frame.clientWidth / 2) / scale;
      scale = Math.min(2, Math.max(0.15, to));
      picture.setAttribute("width", Math.round((placed.width + 24) * scale));
      picture.setAttribute("height", Math.round((placed.height + 24) * scale));
      frame.scrollLeft = middle * scale - frame.clientWidth / 2;
    };
    const button = (label, name, act) => {
      const made = document.createElement("button");
      made.type = "button";
      made.textContent = label;
      if (name !== label) made.setAttribute("aria-label", name);
      made.addEventListener("click", act);
      return made;
    };
    const bar = document.createElement("p");
    bar.className = "row unprinted flow-bar";
    bar.append(button("−", "smaller", () => zoom(scale / 1.25)), button("+", "larger", () => zoom(scale * 1.25)), button("whole width", "whole width", () => zoom(whole())), button("full size", "full size", () => zoom(1)));
    frame.before(bar);
    frame.replaceChildren(picture);
    // Paper takes all of it; a screen begins where the wheat comes in, large enough to read.
    zoom(frame.dataset.whole === undefined ? Math.max(0.85, Math.min(1, whole())) : whole());
    const first = placed.children.find(c => c.id === frame.dataset.first);
    frame.scrollLeft = 0;
    frame.scrollTop = first ? (first.y + first.height / 2) * scale - frame.clientHeight / 2 : 0;
  };

  new ELK().layout(graph).then(show, fault => {
    frame.textContent = "The sheet could not be drawn here; the tables below say the same.";
    console.warn(fault);
  });
})();
