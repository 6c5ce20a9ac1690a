"use strict";
// Look inside: draws the body cut open by a plane with WebGL 2. Millimetres, seconds, degrees Celsius.
(() => {
  const page = document.documentElement;
  const get = (id) => document.getElementById("inside-" + id);
  let frames = 0;
  let errors = 0;
  const note = (key, value) => page.setAttribute("data-" + key, String(value));
  const wrong = () => note("errors", ++errors);
  addEventListener("error", wrong);
  addEventListener("unhandledrejection", wrong);
  document.addEventListener("securitypolicyviolation", wrong);
  note("errors", 0);
  note("frames", 0);

  const canvas = get("canvas");
  const gl = canvas.getContext("webgl2", { stencil: true, alpha: false, antialias: false });
  if (!gl) {
    return;
  }
  const data = JSON.parse(get("data").textContent);

  // ---- numbers -----------------------------------------------------------------------------
  const bytes = (text) => Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
  const words = (text) => new Uint16Array(bytes(text).buffer);
  const half = (h) => {
    const e = (h >> 10) & 31;
    const m = (h & 1023) / 1024;
    return (h >> 15 ? -1 : 1) * (e ? 2 ** (e - 15) * (1 + m) : 2 ** -14 * m);
  };
  const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const mix = (a, s, b, t) => a.map((v, i) => v * s + b[i] * t);
  const cross = (a, b) => [0, 1, 2].map((i) => a[(i + 1) % 3] * b[(i + 2) % 3] - a[(i + 2) % 3] * b[(i + 1) % 3]);
  const clamp = (v, low, high) => Math.min(high, Math.max(low, v));

  // ---- volume: values of plastisol cells, spread two cells outward so that the wall has some too
  const [nx, ny, nz] = data.size;
  const cells = [];
  for (let r = 0; r < data.runs.length; r += 2) {
    for (let i = 0; i < data.runs[r + 1]; i++) {
      cells.push(data.runs[r] + i);
    }
  }
  const beside = [];
  for (let o = 0; o < 27; o++) {
    beside.push((o % 3) - 1 + nx * ((Math.floor(o / 3) % 3) - 1 + ny * (Math.floor(o / 9) - 1)));
  }
  const known = new Uint8Array(nx * ny * nz);
  cells.forEach((c) => (known[c] = 1));
  const ringRound = (front) => {
    const ring = [];
    for (const c of front) {
      for (const step of beside) {
        if (known[c + step] === 0) {
          known[c + step] = 2;
          ring.push(c + step);
        }
      }
    }
    const from = ring.map((c) => beside.map((step) => c + step).filter((d) => known[d] === 1));
    ring.forEach((c) => (known[c] = 1));
    return { ring, from };
  };
  const first = ringRound(cells);
  const rings = [first, ringRound(first.ring)];
  const dense = (text) => {
    const out = new Float32Array(nx * ny * nz);
    words(text).forEach((h, i) => (out[cells[i]] = half(h)));
    for (const { ring, from } of rings) {
      ring.forEach((c, i) => (out[c] = from[i].reduce((sum, d) => sum + out[d], 0) / from[i].length));
    }
    return out;
  };

  // ---- shaders -----------------------------------------------------------------------------
  const BODY = `#version 300 es
    precision highp float;
    in vec3 share; in vec3 normal;
    uniform vec3 low, span, centre, right, top, toward; uniform vec2 scale; uniform float depth;
    out vec3 place; out vec3 smoothed;
    void main() {
      place = low + share * span; smoothed = normal;
      vec3 q = place - centre;
      gl_Position = vec4(dot(q, right) * scale.x, dot(q, top) * scale.y, -dot(q, toward) * depth, 1.0);
    }`;
  const SKIN = `#version 300 es
    precision highp float;
    in vec3 place; in vec3 smoothed;
    uniform vec3 right, top, toward, across; uniform float cut;
    out vec4 colour;
    void main() {
      if (dot(place, across) > cut) discard;
      vec3 flatly = normalize(cross(dFdx(place), dFdy(place)));
      vec3 n = dot(smoothed, flatly) > 0.75 ? normalize(smoothed) : flatly;
      vec3 light = normalize(toward * 0.62 + top * 0.66 - right * 0.42);
      float lit = 0.40 + 0.52 * max(0.0, dot(n, light)) + 0.06 * dot(n, toward);
      lit *= 0.55 + 0.45 * smoothstep(0.0, 0.3, dot(n, toward)); // a darker rim outlines the body
      colour = vec4(vec3(0.91) * min(1.0, lit), 1.0);
    }`;
  const PLANE = `#version 300 es
    void main() { gl_Position = vec4(vec2(gl_VertexID % 2, gl_VertexID / 2) * 4.0 - 1.0, 0.0, 1.0); }`;
  const FACE = `#version 300 es
    precision highp float; precision highp sampler3D;
    uniform sampler3D before, after, set; uniform sampler2D ramp;
    uniform float between, time, showSet, pixels, dots, cut; uniform vec3 limits;
    uniform vec2 middle; uniform vec3 centre, right, top, toward, across, origin, room;
    out vec4 colour;
    void main() {
      vec2 s = (gl_FragCoord.xy - middle) / pixels;
      vec3 p = centre + right * s.x + top * s.y;
      p += toward * (cut - dot(p, across)) / dot(toward, across);
      vec3 at = (p - origin) / room;
      float until = texture(set, at).r;
      float heat = mix(texture(before, at).r, texture(after, at).r, between);
      float value = mix(heat, until, showSet);
      vec3 c = texture(ramp, vec2((value - limits.x) / (limits.y - limits.x) * (255.0 / 256.0) + 0.5 / 256.0, 0.5)).rgb;
      float band = value / limits.z;
      float line = abs(fract(band - 0.5) - 0.5) / max(fwidth(band), 1e-6);
      vec3 shaded = mix(c, vec3(dot(c, vec3(1.0)) > 1.2 ? 0.0 : 1.0), 0.28);
      c = mix(shaded, c, smoothstep(0.2, 0.9, line / dots));
      // White where it turns from flowing to set, in a dark casing that shows it on light colours.
      float late = until - time;
      float away = abs(late) / max(length(vec2(dFdx(late), dFdy(late))), 1e-6) / dots;
      c = mix(vec3(0.08, 0.09, 0.11), c, smoothstep(1.9, 2.6, away));
      c = mix(vec3(1.0), c, smoothstep(0.7, 1.3, away));
      colour = vec4(c, 1.0);
    }`;
  const program = (vertex, fragment) => {
    const p = gl.createProgram();
    for (const [kind, source] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]]) {
      const s = gl.createShader(kind);
      gl.shaderSource(s, source);
      gl.compileShader(s);
      gl.attachShader(p, s);
    }
    gl.linkProgram(p);
    if (!gl.getProgramParameter(p, gl.LINK_STATUS)) {
      throw new Error("shader: " + gl.getProgramInfoLog(p));
    }
    const uniforms = {};
    for (let i = 0; i < gl.getProgramParameter(p, gl.ACTIVE_UNIFORMS); i++) {
      const name = gl.getActiveUniform(p, i).name;
      uniforms[name] = gl.getUniformLocation(p, name);
    }
    return { p, uniforms };
  };
  const skin = program(BODY, SKIN);
  const face = program(PLANE, FACE);
  const put = (to, values) => {
    for (const [name, v] of Object.entries(values)) {
      const u = to.uniforms[name];
      if (u) {
        Array.isArray(v) ? gl["uniform" + v.length + "fv"](u, v) : gl.uniform1f(u, v);
      }
    }
  };

  // ---- body --------------------------------------------------------------------------------
  const points = words(data.points);
  const corners = words(data.corners);
  const normals = new Float32Array(points.length);
  const vertex = (v) => data.span.map((s, a) => (points[3 * v + a] / 65535) * s);
  for (let t = 0; t < corners.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => vertex(corners[t + k]));
    const n = cross(mix(b, 1, a, -1), mix(c, 1, a, -1));
    for (let k = 0; k < 3; k++) {
      n.forEach((v, axis) => (normals[3 * corners[t + k] + axis] += v));
    }
  }
  for (let v = 0; v < normals.length; v += 3) {
    const l = Math.hypot(normals[v], normals[v + 1], normals[v + 2]) || 1;
    [0, 1, 2].forEach((a) => (normals[v + a] /= l));
  }
  const body = gl.createVertexArray();
  gl.bindVertexArray(body);
  const attribute = (name, values, type, normalized) => {
    gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
    gl.bufferData(gl.ARRAY_BUFFER, values, gl.STATIC_DRAW);
    const at = gl.getAttribLocation(skin.p, name);
    gl.enableVertexAttribArray(at);
    gl.vertexAttribPointer(at, 3, type, normalized, 0, 0);
  };
  attribute("share", points, gl.UNSIGNED_SHORT, true);
  attribute("normal", normals, gl.FLOAT, false);
  gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, gl.createBuffer());
  gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, corners, gl.STATIC_DRAW);
  const nothing = gl.createVertexArray();

  // ---- textures: 0 and 1 the moments before and after, 2 set times, 3 the ramp
  const texture = (unit, kind) => {
    gl.activeTexture(gl.TEXTURE0 + unit);
    gl.bindTexture(kind, gl.createTexture());
    for (const f of [gl.TEXTURE_MIN_FILTER, gl.TEXTURE_MAG_FILTER]) {
      gl.texParameteri(kind, f, gl.LINEAR);
    }
    for (const w of [gl.TEXTURE_WRAP_S, gl.TEXTURE_WRAP_T, gl.TEXTURE_WRAP_R]) {
      gl.texParameteri(kind, w, gl.CLAMP_TO_EDGE);
    }
  };
  const fill = (unit, values) => {
    gl.activeTexture(gl.TEXTURE0 + unit);
    gl.texImage3D(gl.TEXTURE_3D, 0, gl.R16F, nx, ny, nz, 0, gl.RED, gl.FLOAT, values);
  };
  [0, 1, 2].forEach((unit) => texture(unit, gl.TEXTURE_3D));
  texture(3, gl.TEXTURE_2D);
  gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGB8, 256, 1, 0, gl.RGB, gl.UNSIGNED_BYTE, bytes(data.ramp));
  // Beyond the wall it sets at once: so the contour runs smoothly between the cells at the wall.
  const set = dense(data.set);
  rings.forEach(({ ring }) => ring.forEach((c) => (set[c] = 0)));
  fill(2, set);
  gl.useProgram(face.p);
  ["before", "after", "set", "ramp"].forEach((name, unit) => gl.uniform1i(face.uniforms[name], unit));
  const moments = new Map();
  const shown = [-1, -1];
  const showMoment = (unit, i) => {
    if (shown[unit] !== i) {
      if (!moments.has(i)) {
        moments.set(i, dense(data.heat[i]));
      }
      fill(unit, moments.get(i));
      shown[unit] = i;
    }
  };
  const between = (time) => {
    const last = data.times.length - 1;
    if (last < 0) {
      return 0;
    }
    let i = 0;
    while (i < last - 1 && data.times[i + 1] <= time) {
      i++;
    }
    const next = Math.min(i + 1, last);
    showMoment(0, i);
    showMoment(1, next);
    return next === i ? 0 : clamp((time - data.times[i]) / (data.times[next] - data.times[i]), 0, 1);
  };

  // ---- what is asked for -------------------------------------------------------------------
  const LETTERS = ["x", "y", "z"];
  const high = mix(data.min, 1, data.span, 1);
  const middle = mix(data.min, 1, data.span, 0.5);
  if (!data.times.length) { // a run that kept no temperatures still has its set times
    get("colour").options[0].remove();
  }
  const options = (id) => Array.from(get(id).options, (o) => o.value);
  const [lengthwise, otherWay] = options("axis");
  const state = { axis: lengthwise, cut: 0, time: data.gate ?? data.end / 4, colour: options("colour")[0], yaw: 0, pitch: 0, zoom: 1 };
  const slender = Math.hypot(dot(data.up, data.span), dot(data.through, data.span)) / Math.abs(dot(data.along, data.span));
  const look = () => {
    const views = { [lengthwise]: [0.26, 0.36, 1], [otherWay]: [0.26, 1.0, 1] };
    [state.yaw, state.pitch, state.zoom] = views[state.axis] ?? [0.92, 0.38, 2.2];
  };
  const cutBy = (axis) => {
    state.axis = axis;
    state.cut = data.cut[LETTERS.indexOf(axis)];
    look();
  };
  const fromAddress = () => {
    const asked = new URLSearchParams(location.hash.slice(1));
    const number = (key, low, top) => {
      const v = parseFloat(asked.get(key));
      return Number.isFinite(v) ? clamp(v, low, top) : state[key];
    };
    cutBy(options("axis").includes(asked.get("axis")) ? asked.get("axis") : state.axis);
    const k = LETTERS.indexOf(state.axis);
    state.cut = number("cut", data.min[k], high[k]);
    state.time = number("time", 0, data.end);
    state.colour = options("colour").includes(asked.get("colour")) ? asked.get("colour") : state.colour;
  };

  // ---- drawing -----------------------------------------------------------------------------
  const drawBody = () => {
    gl.bindVertexArray(body);
    gl.drawElements(gl.TRIANGLES, corners.length, gl.UNSIGNED_SHORT, 0);
  };
  const camera = () => {
    const [cy, sy, cp, sp] = [Math.cos(state.yaw), Math.sin(state.yaw), Math.cos(state.pitch), Math.sin(state.pitch)];
    const right = mix(data.along, cy, data.through, -sy);
    const toward = mix(mix(data.through, cy, data.along, sy), cp, data.up, sp);
    const top = cross(toward, right);
    const reach = (v) => v.reduce((sum, c, a) => sum + Math.abs(c) * data.span[a], 0);
    const pixels = state.zoom * 0.94 * Math.min(canvas.width / reach(right), canvas.height / reach(top));
    // Cut across, the face is in the middle of the picture wherever the cut is.
    const k = LETTERS.indexOf(state.axis);
    const centre = middle.map((m, a) => (a === k && data.along[a] ? state.cut : m));
    return { centre, right, top, toward, pixels, depth: 0.5 / reach(toward) };
  };
  // Part, gate and sprue overlap, so faces behind the cut are counted, back faces up and front faces
  // down: where the count isn't zero the cut goes through a solid, and the plane is painted there.
  const draw = () => {
    // At least four samples a pixel; not the browser's own, which would cut at the pixel's middle
    // what it counts beside it, and leave specks.
    const dots = Math.max(2, devicePixelRatio || 1);
    const wide = Math.max(1, canvas.clientWidth);
    canvas.width = Math.round(wide * dots);
    canvas.height = Math.round(clamp(wide * slender + 90, 250, Math.max(250, wide * 0.62)) * dots);
    const see = camera();
    const k = LETTERS.indexOf(state.axis);
    const side = see.toward[k] < 0 ? -1 : 1;
    const common = {
      ...see, low: data.min, span: data.span,
      scale: [(2 * see.pixels) / canvas.width, (2 * see.pixels) / canvas.height],
      across: [0, 1, 2].map((a) => (a === k ? side : 0)), cut: side * state.cut,
    };
    gl.viewport(0, 0, canvas.width, canvas.height);
    gl.clearColor(1, 1, 1, 1);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT | gl.STENCIL_BUFFER_BIT);
    gl.useProgram(skin.p);
    put(skin, common);
    gl.enable(gl.STENCIL_TEST);
    gl.stencilFunc(gl.ALWAYS, 0, 255);
    gl.stencilOpSeparate(gl.FRONT, gl.KEEP, gl.KEEP, gl.DECR_WRAP);
    gl.stencilOpSeparate(gl.BACK, gl.KEEP, gl.KEEP, gl.INCR_WRAP);
    gl.colorMask(false, false, false, false);
    gl.disable(gl.DEPTH_TEST);
    drawBody();
    gl.colorMask(true, true, true, true);
    gl.enable(gl.DEPTH_TEST);
    gl.stencilOp(gl.KEEP, gl.KEEP, gl.KEEP);
    drawBody();
    gl.disable(gl.DEPTH_TEST);
    if (Math.abs(see.toward[k]) > 0.02) {
      const at = between(state.time);
      gl.useProgram(face.p);
      put(face, {
        ...common, between: at, time: state.time || -1e3, showSet: state.colour === "set" ? 1 : 0, dots,
        limits: state.colour === "set" ? data.setScale : data.heatScale,
        middle: [canvas.width / 2, canvas.height / 2], origin: data.origin, room: data.size.map((n) => n * data.cell),
      });
      gl.stencilFunc(gl.NOTEQUAL, 0, 255);
      gl.bindVertexArray(nothing);
      gl.drawArrays(gl.TRIANGLES, 0, 3);
    }
    gl.disable(gl.STENCIL_TEST);
    mark(see, side, dots);
    tell();
    if (frames < 3) { // asking makes the page wait for the drawing, so only at first
      const rgba = new Uint8Array(4);
      gl.readPixels(canvas.width >> 1, canvas.height >> 1, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, rgba);
      note("middle", rgba.slice(0, 3).join(" "));
      gl.getError() && wrong();
    }
    note("frames", ++frames);
    note("axis", state.axis);
    note("colour", state.colour);
    note("cut", state.cut.toFixed(2));
    note("time", state.time.toFixed(2));
  };

  // Numbers of the pockets, in a row above the body, pale where the place is cut away.
  const mark = (see, side, dots) => {
    const svg = get("marks");
    const [w, h] = [canvas.width / dots, canvas.height / dots];
    const k = LETTERS.indexOf(state.axis);
    svg.setAttribute("viewBox", `0 0 ${w} ${h}`);
    data.pockets.forEach((p, i) => {
      const q = mix(p, 1, see.centre, -1);
      const x = w / 2 + (dot(q, see.right) * see.pixels) / dots;
      const y = h / 2 - (dot(q, see.top) * see.pixels) / dots;
      const g = svg.children[i];
      for (const line of g.querySelectorAll("line")) {
        Object.entries({ x1: x, y1: 24, x2: x, y2: y }).forEach(([key, v]) => line.setAttribute(key, v));
      }
      g.children[2].setAttribute("cx", x);
      g.children[2].setAttribute("cy", y);
      g.children[3].setAttribute("transform", `translate(${x} 24)`);
      g.setAttribute("opacity", side * (p[k] - state.cut) > 0.05 ? 0.35 : 1);
    });
  };
  const clock = (s) => (s < 9.95 ? s.toFixed(1) + " s" : s < 119.5 ? Math.round(s) + " s" : Math.floor(s / 60) + " min " + Math.round(s % 60) + " s");
  const tell = () => {
    const k = LETTERS.indexOf(state.axis);
    const share = Math.sqrt(state.time / data.end);
    const i = Math.min(99, Math.floor(share * 100));
    const flows = data.flowing[i] + (share * 100 - i) * (data.flowing[i + 1] - data.flowing[i]);
    const gate = data.gate === null ? "" : state.time < data.gate ? " The gate is open." : ` The gate closed after ${clock(data.gate)}: nothing flows in any more.`;
    get("says").textContent = `After ${clock(state.time)}: ${Math.round(flows)} % of the plastisol still flows.${gate}`;
    get("time").value = Math.round(share * 1000);
    get("time").setAttribute("aria-valuetext", clock(state.time));
    get("time-now").textContent = clock(state.time);
    const where = `${state.axis} ${state.cut.toFixed(1)} mm`;
    get("cut").value = Math.round(((state.cut - data.min[k]) / data.span[k]) * 1000);
    get("cut").setAttribute("aria-valuetext", where);
    get("cut-now").textContent = where;
    get("axis").value = state.axis;
    get("colour").value = state.colour;
    get("heat").hidden = state.colour === "set";
    get("set").hidden = state.colour !== "set";
  };
  let waiting = false;
  const change = () => {
    if (!waiting) {
      waiting = true;
      requestAnimationFrame(() => {
        waiting = false;
        draw();
      });
    }
  };

  // ---- hands -------------------------------------------------------------------------------
  const SECONDS = 10; // for all of the cooling, the early part slower
  let playing = 0;
  const stop = () => {
    playing = 0;
    get("play").textContent = "Play";
  };
  const play = (now) => {
    if (playing) {
      const share = Math.sqrt(state.time / data.end) + Math.max(0, now - playing) / 1000 / SECONDS;
      state.time = data.end * Math.min(1, share) ** 2;
      playing = Math.max(now, playing);
      draw();
      share < 1 ? requestAnimationFrame(play) : stop();
    }
  };
  const on = (id, kind, what) => get(id).addEventListener(kind, (e) => { what(e); change(); });
  on("play", "click", () => {
    if (playing) {
      stop();
      return;
    }
    if (state.time >= data.end) {
      state.time = 0;
    }
    playing = performance.now();
    get("play").textContent = "Stop";
    requestAnimationFrame(play);
  });
  const jump = (time) => () => { stop(); state.time = time; };
  on("start", "click", jump(0));
  on("gate", "click", jump(data.gate ?? data.end));
  get("gate").hidden = data.gate === null;
  on("time", "input", () => { stop(); state.time = data.end * (get("time").value / 1000) ** 2; });
  on("cut", "input", () => {
    const k = LETTERS.indexOf(state.axis);
    state.cut = data.min[k] + (data.span[k] * get("cut").value) / 1000;
  });
  on("axis", "change", () => cutBy(get("axis").value));
  on("colour", "change", () => { state.colour = get("colour").value; });
  const zoom = (by) => () => { state.zoom = clamp(state.zoom * by, 0.5, 12); };
  on("in", "click", zoom(1.3));
  on("out", "click", zoom(1 / 1.3));
  on("home", "click", look);
  const turn = (yaw, pitch) => {
    state.yaw += yaw;
    state.pitch = clamp(state.pitch + pitch, -Math.PI / 2, Math.PI / 2);
  };
  const KEYS = {
    ArrowLeft: () => turn(0.1, 0), ArrowRight: () => turn(-0.1, 0), ArrowUp: () => turn(0, 0.1), ArrowDown: () => turn(0, -0.1),
    "+": zoom(1.3), "=": zoom(1.3), "-": zoom(1 / 1.3), Home: look,
  };
  on("canvas", "keydown", (e) => {
    if (KEYS[e.key] && !e.ctrlKey && !e.metaKey && !e.altKey) {
      e.preventDefault();
      KEYS[e.key]();
    }
  });
  let held = null;
  on("canvas", "pointerdown", (e) => { held = [e.clientX, e.clientY]; canvas.setPointerCapture(e.pointerId); });
  on("canvas", "pointermove", (e) => {
    if (held) {
      turn((held[0] - e.clientX) * 0.008, (e.clientY - held[1]) * 0.008);
      held = [e.clientX, e.clientY];
    }
  });
  ["pointerup", "pointercancel"].forEach((kind) => on("canvas", kind, () => { held = null; }));
  canvas.addEventListener("wheel", (e) => {
    if (e.ctrlKey) { // two fingers on a pad; a bare wheel scrolls the page
      e.preventDefault();
      zoom(Math.exp(-e.deltaY * 0.01))();
      change();
    }
  }, { passive: false });
  canvas.addEventListener("webglcontextlost", () => { get("stage").hidden = true; get("note").hidden = false; });
  addEventListener("hashchange", () => { fromAddress(); change(); });
  addEventListener("resize", change);

  get("note").hidden = true;
  get("stage").hidden = false;
  fromAddress();
  change();
})();
