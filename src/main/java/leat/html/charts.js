(function () {
  'use strict';
  var charts = JSON.parse(document.getElementById('charts').textContent);
  var dashes = [[], [8, 4], [2, 3], [10, 3, 2, 3], [14, 5], [5, 2]];
  var built = [];

  function css(name) { return getComputedStyle(document.documentElement).getPropertyValue(name).trim(); }
  var tones = {bad: '--fail', doubt: '--warn', good: '--good'};
  function colour(s, i) { return css(tones[s.tone] || '--c' + i % 6); }
  function make(tag, cls, text) {
    var e = document.createElement(tag);
    if (cls) e.className = cls;
    if (text !== undefined) e.textContent = text;
    return e;
  }
  function known(v) { return v !== undefined && v !== null; }
  function two(n) { return (n < 10 ? '0' : '') + n; }
  function value(axis, v) {
    if (axis.names) return axis.names[Math.round(v)] || '';
    if (axis.time) {
      var d = new Date(v * 1000);
      var day = d.getUTCFullYear() + '-' + two(d.getUTCMonth() + 1) + '-' + two(d.getUTCDate());
      return v % 86400 ? day + ' ' + two(d.getUTCHours()) + ':' + two(d.getUTCMinutes()) : day;
    }
    return String(Number(v.toPrecision(Math.max(3, axis.digits)))) + (axis.unit ? '\u00a0' + axis.unit : '');
  }
  function heading(axis) { return axis.unit ? axis.label + ', ' + axis.unit : axis.label; }

  /* Where each series lies in the table of values: its low ends, if any, before its values. */
  function columns(c) {
    var at = 1;
    return c.series.map(function (s) {
      var low = s.low ? at++ : 0;
      return {low: low, high: at++};
    });
  }
  function values(c) {
    return c.data.map(function (col, i) {
      return i ? col.map(function (v) { return v === '' ? undefined : v; }) : col;
    });
  }

  /* The value of a series at a place, or the nearest one beside it. */
  function near(col, i, joined) {
    if (known(col[i]) || !joined || col[i] === null) return i;
    for (var d = 1; d < col.length; d++) {
      if (known(col[i - d])) return i - d;
      if (known(col[i + d])) return i + d;
    }
    return i;
  }

  function build(box, c) {
    var bars = !!c.x.names;
    var cols = columns(c);
    var data = values(c);
    var hidden = [];
    var view = {min: bars ? -0.6 : c.x.min, max: bars ? c.x.names.length - 0.4 : c.x.max};
    var u = null;
    var width = 0;

    box.textContent = '';
    var title = box.parentNode.querySelector('h2').textContent;
    box.tabIndex = 0;
    box.setAttribute('role', 'group');
    box.setAttribute('aria-label', title + ': chart. Left and right keys step through the values'
      + (bars ? '.' : ', plus and minus zoom, 0 shows all.'));
    var keys = make('div', 'legend');
    var up = make('p', 'axis', heading(c.y));
    var plot = make('div', 'plot');
    var along = make('p', 'axis along', bars ? '' : heading(c.x));
    var read = make('p', 'read', ' ');
    read.setAttribute('role', 'status');
    box.append(keys, up, plot, along, read);

    c.series.forEach(function (s, i) {
      var key = make('button', 'key');
      key.type = 'button';
      key.setAttribute('aria-pressed', 'true');
      key.append(swatch(s, i), make('span', '', s.label));
      key.title = 'Shows or hides ' + s.label;
      key.addEventListener('click', function () {
        hidden[i] = !hidden[i];
        key.setAttribute('aria-pressed', String(!hidden[i]));
        if (cols[i].low) u.setSeries(cols[i].low, {show: !hidden[i]});
        u.setSeries(cols[i].high, {show: !hidden[i]});
        told();
      });
      keys.append(key);
    });
    if (!bars && data[0].length > 2) {
      var tools = make('span', 'tools screen');
      [['+', 'Zoom in', 0.5], ['\u2212', 'Zoom out', 2], ['Whole', 'Show all', 0]].forEach(function (t) {
        var b = make('button', '', t[0]);
        b.type = 'button';
        b.setAttribute('aria-label', t[1]);
        b.addEventListener('click', function () { zoom(t[2]); });
        tools.append(b);
      });
      keys.append(tools);
    }

    function zoom(factor) {
      var min = view.min, max = view.max;
      if (factor) {
        var left = u.cursor.left;
        var middle = left >= 0 ? u.posToVal(left, 'x') : (u.scales.x.min + u.scales.x.max) / 2;
        var half = (u.scales.x.max - u.scales.x.min) * factor / 2;
        min = Math.max(view.min, middle - half);
        max = Math.min(view.max, middle + half);
      }
      if (max > min) u.setScale('x', {min: min, max: max});
    }

    function told() {
      var i = u.cursor.idx;
      if (!known(i)) { read.textContent = ' '; return; }
      var words = [];
      c.series.forEach(function (s, k) {
        if (hidden[k]) return;
        var joined = s.kind !== 'points' && s.kind !== 'bars';
        var at = near(data[cols[k].high], i, joined);
        var v = data[cols[k].high][at];
        if (!known(v)) return;
        var text = s.label + ' ';
        if (cols[k].low && known(data[cols[k].low][at])) text += value(c.y, data[cols[k].low][at]) + ' to ';
        text += value(c.y, v);
        var said = c.words[k] && c.words[k][at];
        words.push(said ? text + ' (' + said + ')' : text);
      });
      read.textContent = value(c.x, data[0][i]) + ': ' + (words.join('; ') || 'no value');
    }

    function step(by) {
      var i = known(u.cursor.idx) ? u.cursor.idx + by : by > 0 ? 0 : data[0].length - 1;
      while (i > 0 && i < data[0].length - 1 && (data[0][i] < u.scales.x.min || data[0][i] > u.scales.x.max)) i += by;
      i = Math.max(0, Math.min(data[0].length - 1, i));
      var p = u.valToPos(data[0][i], 'x');
      u.setCursor(bars ? {left: 5, top: p} : {left: p, top: 5});
    }
    box.onkeydown = function (e) {
      if (e.target !== box || e.ctrlKey || e.altKey || e.metaKey) return;
      var act = {ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1}[e.key];
      if (act && (bars || e.key === 'ArrowLeft' || e.key === 'ArrowRight')) step(act);
      else if (!bars && (e.key === '+' || e.key === '=')) zoom(0.5);
      else if (!bars && e.key === '-') zoom(2);
      else if (!bars && (e.key === '0' || e.key === 'Escape')) zoom(0);
      else return;
      e.preventDefault();
    };

    function draw(w) {
      if (u) u.destroy();
      width = w;
      u = new uPlot(options(c, cols, data, bars, w, told, zoom), data, plot);
      u.setScale('x', view);
      hidden.forEach(function (off, i) {
        if (!off) return;
        if (cols[i].low) u.setSeries(cols[i].low, {show: false});
        u.setSeries(cols[i].high, {show: false});
      });
      box.plot = u;
    }
    function fit(w) {
      if (w > 50 && w !== width) draw(w);
    }
    var one = {
      redraw: function (w) { draw(w || Math.floor(plot.clientWidth) || 600); }
    };
    fit(Math.floor(plot.clientWidth) || 600);
    if (window.ResizeObserver) {
      new ResizeObserver(function () {
        if (!document.documentElement.classList.contains('printing')) fit(Math.floor(plot.clientWidth));
      }).observe(plot);
    }
    return one;
  }

  /* The sign of a series: its dash or its block, in its colour. */
  function swatch(s, i) {
    var ns = document.querySelector('svg.ns').namespaceURI;
    var svg = document.createElementNS(ns, 'svg');
    svg.setAttribute('width', '26');
    svg.setAttribute('height', '12');
    svg.setAttribute('aria-hidden', 'true');
    svg.classList.add(s.tone || 's' + i % 6);
    var e;
    if (s.kind === 'line' || s.kind === 'steps') {
      e = document.createElementNS(ns, 'path');
      e.setAttribute('d', 'M0 6H26');
      e.setAttribute('stroke', 'currentColor');
      e.setAttribute('stroke-width', '2.5');
      e.setAttribute('stroke-dasharray', dashes[i % 6].join(' ') || 'none');
    } else if (s.kind === 'points') {
      e = document.createElementNS(ns, 'circle');
      e.setAttribute('cx', '13');
      e.setAttribute('cy', '6');
      e.setAttribute('r', '5');
      e.setAttribute('fill', 'currentColor');
    } else {
      e = document.createElementNS(ns, 'rect');
      e.setAttribute('width', '26');
      e.setAttribute('height', '12');
      e.setAttribute('fill', 'currentColor');
      if (s.kind === 'band') e.setAttribute('fill-opacity', '0.3');
    }
    svg.append(e);
    return svg;
  }

  function faded(c) {
    var n = /^#(..)(..)(..)$/.exec(c);
    return n ? 'rgba(' + parseInt(n[1], 16) + ',' + parseInt(n[2], 16) + ',' + parseInt(n[3], 16) + ',0.22)' : c;
  }

  function series(c, cols, data, bars, width) {
    var all = [{}];
    var bands = [];
    c.series.forEach(function (s, i) {
      var ink = colour(s, i);
      if (s.kind === 'band') {
        all.push({label: s.label, stroke: faded(ink), width: 1, points: {show: false}});
        all.push({label: s.label, stroke: faded(ink), width: 1, points: {show: false}});
        bands.push({series: [cols[i].high, cols[i].low], fill: faded(ink)});
        return;
      }
      var one = {label: s.label, stroke: ink, width: 2, dash: dashes[i % 6], points: {show: false}};
      if (s.kind === 'steps') {
        one.paths = uPlot.paths.stepped({align: 1});
      } else if (s.kind === 'points') {
        one.paths = function () { return null; };
        one.points = {show: true, size: 9, fill: ink, stroke: ink};
      } else if (s.kind === 'bars') {
        one.fill = ink;
        one.width = 0;
        one.dash = [];
        var how = {size: [0.7, bars && narrow(width) ? 12 : 20]};
        if (cols[i].low) {
          all.push({label: s.label, paths: function () { return null; }, points: {show: false}});
          how.disp = {
            y0: {unit: 1, values: function () { return data[cols[i].low]; }},
            y1: {unit: 1, values: function () { return data[cols[i].high]; }}
          };
        }
        one.paths = uPlot.paths.bars(how);
      }
      all.push(one);
    });
    return {series: all, bands: bands};
  }

  function options(c, cols, data, bars, width, told, zoom) {
    var ink = css('--ink');
    var line = css('--line');
    var font = '12px system-ui, "DejaVu Sans", sans-serif';
    var made = series(c, cols, data, bars, width);
    var times = [
      [31536000, '{YYYY}', null, null, null, null, null, null, 1],
      [2419200, '{MMM}', '\n{YYYY}', null, null, null, null, null, 1],
      [86400, '{D} {MMM}', '\n{YYYY}', null, null, null, null, null, 1],
      [3600, '{HH}:{mm}', '\n{D} {MMM}', null, '\n{D} {MMM}', null, null, null, 1],
      [60, '{HH}:{mm}', '\n{D} {MMM}', null, '\n{D} {MMM}', null, null, null, 1]
    ];
    function axis(key, side) {
      var one = {scale: key, side: side, stroke: ink, font: font, grid: {stroke: line, width: 1}, ticks: {stroke: line, width: 1}};
      if (c[key].time) one.values = times;
      else one.values = function (u, splits) { return splits.map(function (v) { return known(v) ? String(Number(v.toPrecision(9))) : ''; }); };
      return one;
    }
    var x = axis('x', bars ? 3 : 2);
    var y = axis('y', bars ? 2 : 3);
    x.size = c.x.time ? 44 : 30;
    if (bars) {
      y.size = c.y.time ? 44 : 30;
      var room = Math.min(Math.floor(width * 0.42), 8 + 7 * Math.max.apply(null, c.x.names.map(function (n) { return n.length; })));
      var most = Math.max(3, Math.floor((room - 12) / 6.6));
      x.size = narrow(width) ? 6 : room;
      x.grid = {show: false};
      x.splits = function () { return c.x.names.map(function (n, i) { return i; }); };
      x.values = function () {
        return c.x.names.map(function (n) { return narrow(width) ? '' : n.length > most ? n.slice(0, most - 1) + '\u2026' : n; });
      };
    } else {
      y.size = function (u, labels) {
        var longest = (labels || []).reduce(function (m, l) { return Math.max(m, String(l).length); }, 1);
        return 14 + 7.5 * longest;
      };
    }
    return {
      width: width,
      height: bars ? 50 + (narrow(width) ? 46 : 28) * c.x.names.length : Math.min(340, Math.max(230, Math.round(width * 0.5))),
      padding: [bars && narrow(width) ? 24 : 14, bars && !narrow(width) ? beside(c) : 14, 0, 4],
      tzDate: function (ts) { return uPlot.tzDate(new Date(ts * 1000), 'Etc/UTC'); },
      legend: {show: false},
      cursor: {
        x: !bars, y: bars,
        drag: {x: !bars, y: false, setScale: true},
        points: {size: 8, width: 2},
        bind: {dblclick: function () { return function () { if (!bars) zoom(0); }; }}
      },
      scales: {
        x: {time: c.x.time, ori: bars ? 1 : 0, dir: bars ? -1 : 1},
        y: {time: c.y.time, ori: bars ? 0 : 1, dir: 1, range: function () { return [c.y.min, c.y.max]; }}
      },
      axes: [x, y],
      series: made.series,
      bands: made.bands,
      hooks: {
        drawClear: [function (u) { events(u, c); }],
        draw: [function (u) { marks(u, c, bars); if (bars) words(u, c, cols, data); }],
        setCursor: [told]
      }
    };
  }

  /* Words stand behind a bar's field; on a narrow screen they stand over the bar, behind its name. */
  function narrow(width) { return width < 560; }
  function beside(c) {
    var longest = 0;
    c.series.forEach(function (s, k) {
      c.data[columns(c)[k].high].forEach(function (v, i) {
        if (v !== '' && known(v)) longest = Math.max(longest, ((c.words[k] && c.words[k][i]) || value(c.y, v)).length);
      });
    });
    return 16 + Math.min(7 * longest, 240);
  }
  function ratio(u) { return u.ctx.canvas.width / u.width; }

  function events(u, c) {
    var r = ratio(u);
    u.ctx.save();
    c.events.forEach(function (e) {
      var a = Math.max(u.bbox.left, u.valToPos(e.from, 'x', true));
      var b = Math.min(u.bbox.left + u.bbox.width, u.valToPos(e.to, 'x', true));
      if (b < u.bbox.left || a > u.bbox.left + u.bbox.width) return;
      u.ctx.fillStyle = css('--shade');
      u.ctx.fillRect(a, u.bbox.top, Math.max(2 * r, b - a), u.bbox.height);
      u.ctx.fillStyle = css('--soft');
      u.ctx.fillRect(a, u.bbox.top, 1 * r, u.bbox.height);
      u.ctx.font = 11 * r + 'px system-ui, "DejaVu Sans", sans-serif';
      u.ctx.textBaseline = 'bottom';
      u.ctx.textAlign = 'left';
      var w = u.ctx.measureText(e.label).width;
      u.ctx.fillText(e.label, Math.min(a, u.bbox.left + u.bbox.width - w), u.bbox.top);
    });
    u.ctx.restore();
  }

  function marks(u, c, bars) {
    var r = ratio(u), box = u.bbox, ctx = u.ctx;
    ctx.save();
    ctx.strokeStyle = ctx.fillStyle = css('--ink');
    ctx.lineWidth = 1.5 * r;
    ctx.setLineDash([6 * r, 4 * r]);
    ctx.textAlign = 'left';
    ctx.font = 11 * r + 'px system-ui, "DejaVu Sans", sans-serif';
    c.marks.forEach(function (m) {
      var level = m.across !== bars;
      var p = u.valToPos(m.at, m.across ? 'y' : 'x', true);
      if (level ? p < box.top - 1 || p > box.top + box.height + 1 : p < box.left - 1 || p > box.left + box.width + 1) return;
      ctx.beginPath();
      if (level) { ctx.moveTo(box.left, p); ctx.lineTo(box.left + box.width, p); }
      else { ctx.moveTo(p, box.top); ctx.lineTo(p, box.top + box.height); }
      ctx.stroke();
      var w = ctx.measureText(m.label).width;
      ctx.textBaseline = 'bottom';
      var x = level ? box.left + box.width - w - 4 * r : Math.max(box.left, Math.min(p - w / 2, box.left + box.width - w));
      var y = level ? (p - 13 * r < box.top ? p + 14 * r : p - 2 * r) : box.top;
      halo(ctx, r, m.label, x, y);
    });
    ctx.restore();
  }

  /* A word that stays readable over lines and bars. */
  function halo(ctx, r, text, x, y) {
    ctx.save();
    ctx.setLineDash([]);
    ctx.lineJoin = 'round';
    ctx.lineWidth = 4 * r;
    ctx.strokeStyle = css('--paper');
    ctx.strokeText(text, x, y);
    ctx.restore();
    ctx.fillText(text, x, y);
  }

  function words(u, c, cols, data) {
    var r = ratio(u), box = u.bbox, ctx = u.ctx;
    ctx.save();
    ctx.fillStyle = css('--ink');
    ctx.font = 12 * r + 'px system-ui, "DejaVu Sans", sans-serif';
    ctx.textBaseline = 'middle';
    ctx.textAlign = 'left';
    var told = [];
    c.series.forEach(function (s, k) {
      if (!u.series[cols[k].high].show) return;
      data[cols[k].high].forEach(function (v, i) {
        if (!known(v)) return;
        var text = (c.words[k] && c.words[k][i]) || value(c.y, v);
        var below = narrow(u.width);
        var x = below ? box.left : box.left + box.width + 8 * r;
        if (below) text = (told[i] ? '' : c.x.names[i] + ': ') + text;
        var room = u.ctx.canvas.width - x - 2 * r;
        if (ctx.measureText(text).width > room) {
          while (text.length > 2 && ctx.measureText(text + '\u2026').width > room) text = text.slice(0, -1);
          text += '\u2026';
        }
        halo(ctx, r, text, x, u.valToPos(i, 'x', true) + (below ? (told[i] ? 16 : -16) * r : 0));
        told[i] = true;
      });
    });
    ctx.restore();
  }

  document.querySelectorAll('.chart').forEach(function (box) {
    built.push(build(box, charts[Number(box.dataset.chart)]));
  });
  function all(w) { built.forEach(function (b) { b.redraw(w); }); }
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', function () { all(); });
  addEventListener('beforeprint', function () {
    document.documentElement.classList.add('printing');
    all(640);
  });
  addEventListener('afterprint', function () {
    document.documentElement.classList.remove('printing');
    all();
  });
})();
