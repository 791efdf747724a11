(function () {
  'use strict';
  document.documentElement.classList.add('js');

  function number(text) {
    var bare = text.replace(/[\s\u00a0]/g, '');
    return /^[-+]?[0-9.]+(e[-+]?[0-9]+)?$/i.test(bare) ? Number(bare) : NaN;
  }

  /* Unknown values stay at the end, whichever way it is sorted. */
  function compare(a, b, down) {
    if (a === '-' || b === '-') return (a === '-') - (b === '-');
    var x = number(a), y = number(b);
    var order = isNaN(x) || isNaN(y) ? a.localeCompare(b, 'en', {numeric: true}) : x - y;
    return down ? -order : order;
  }

  function sort(table, heads, c) {
    var down = heads[c].getAttribute('aria-sort') === 'ascending';
    heads.forEach(function (h) { h.removeAttribute('aria-sort'); });
    heads[c].setAttribute('aria-sort', down ? 'descending' : 'ascending');
    var body = table.tBodies[0];
    var rows = Array.from(body.rows).map(function (r, i) { return {r: r, i: i, t: r.cells[c].textContent}; });
    rows.sort(function (a, b) { return compare(a.t, b.t, down) || a.i - b.i; });
    rows.forEach(function (one) { body.appendChild(one.r); });
  }

  document.querySelectorAll('table.sorts').forEach(function (table) {
    var heads = Array.from(table.tHead.rows[0].cells);
    heads.forEach(function (head, c) {
      var button = document.createElement('button');
      button.type = 'button';
      button.textContent = head.textContent;
      button.title = 'Sorts by ' + head.textContent;
      button.addEventListener('click', function () { sort(table, heads, c); });
      var plain = document.createElement('span');
      plain.className = 'paper';
      plain.setAttribute('aria-hidden', 'true');
      plain.textContent = head.textContent;
      head.textContent = '';
      head.append(button, plain);
    });
  });

  document.querySelectorAll('.rows').forEach(function (part) {
    var field = part.querySelector('.filter');
    if (!field) return;
    var count = part.querySelector('.count');
    var rows = Array.from(part.querySelector('tbody').rows);
    var words = rows.map(function (r) { return r.textContent.toLowerCase(); });
    field.addEventListener('input', function () {
      var wanted = field.value.toLowerCase().trim();
      var shown = 0;
      rows.forEach(function (r, i) {
        r.hidden = wanted !== '' && words[i].indexOf(wanted) < 0;
        shown += r.hidden ? 0 : 1;
      });
      count.textContent = wanted === '' ? '' : shown + ' of ' + rows.length + ' rows';
    });
  });

  function copied(button, done) {
    button.textContent = done ? 'Copied' : 'Not copied: select it';
    setTimeout(function () { button.textContent = 'Copy'; }, 2500);
  }

  /* Older ways of copying want the text selected. */
  function bySelection(pre) {
    var range = document.createRange();
    range.selectNodeContents(pre);
    var selection = getSelection();
    selection.removeAllRanges();
    selection.addRange(range);
    return document.execCommand('copy');
  }

  document.querySelectorAll('.copy').forEach(function (button) {
    var pre = button.parentNode.querySelector('pre');
    button.setAttribute('aria-label', 'Copy: ' + pre.textContent.slice(0, 60));
    button.addEventListener('click', function () {
      if (navigator.clipboard && navigator.clipboard.writeText) {
        navigator.clipboard.writeText(pre.textContent).then(
          function () { copied(button, true); },
          function () { copied(button, bySelection(pre)); });
      } else {
        copied(button, bySelection(pre));
      }
    });
  });
})();
