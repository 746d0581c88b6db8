// What is wrong with a page, as a list of sentences. Contrast: WCAG 2.1, success criterion 1.4.3 and its definition of
// relative luminance; headings and alternative texts: its techniques G141 and H37.
(() => {
  const wrong = [];
  const seen = (e) => e.checkVisibility() && e.getBoundingClientRect().width > 1.5;
  let level = 0;
  document.querySelectorAll('h1, h2, h3, h4').forEach((h) => {
    const own = Number(h.tagName[1]);
    if (own > level + 1) wrong.push('heading "' + h.textContent + '" skips a level');
    level = own;
  });
  if (document.querySelectorAll('h1').length !== 1) wrong.push('not one first heading');
  document.querySelectorAll('img').forEach((i) => { if (!i.alt) wrong.push('a picture has no text'); });
  document.querySelectorAll('th').forEach((t) => { if (!t.scope) wrong.push('a heading of a table has no scope'); });
  document.querySelectorAll('.drawing svg').forEach((svg) => {
    const box = svg.getBoundingClientRect();
    const title = svg.querySelector('title');
    if (!title || !title.textContent) wrong.push('a chart has no title');
    if (svg.getAttribute('role') !== 'img') wrong.push('a chart is not told as a picture');
    if (box.width < 300 || box.height < 100) wrong.push('chart of ' + box.width + ' by ' + box.height);
    if (Math.abs(box.left - svg.closest('section').getBoundingClientRect().left) > 1) wrong.push('chart begins at ' + box.left);
    if (svg.parentElement.getBoundingClientRect().right > innerWidth + 0.5) wrong.push('chart runs out of the page');
  });
  if (document.documentElement.scrollWidth > innerWidth) {
    wrong.push('the page is ' + document.documentElement.scrollWidth + ' wide in a window of ' + innerWidth);
  }
  const ids = [...document.querySelectorAll('[id]')].map((e) => e.id);
  ids.filter((id, i) => ids.indexOf(id) !== i).forEach((id) => wrong.push('id ' + id + ' stands twice'));

  const parts = (color) => color.match(/[\d.]+/g).map(Number);
  const luminance = ([r, g, b]) => [r, g, b].map((c) => c / 255)
    .map((c) => (c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
    .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
  const ground = (e) => {
    for (let at = e; at; at = at.parentElement) {
      const color = parts(getComputedStyle(at).backgroundColor);
      if (color.length < 4 || color[3] === 1) return color;
    }
    return [255, 255, 255];
  };
  const check = (e, ink, under) => {
    const [light, dark] = [luminance(ink), luminance(under)].sort((a, b) => b - a);
    const ratio = (light + 0.05) / (dark + 0.05);
    if (ratio < 4.5) wrong.push('contrast ' + ratio.toFixed(2) + ' of "' + e.textContent.trim().slice(0, 40) + '"');
  };
  let texts = 0;
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const e = node.parentElement;
    if (!node.nodeValue.trim() || e.tagName === 'title') continue;
    if (e.closest('svg')) {
      const fill = getComputedStyle(e).fill;
      if (e.tagName === 'text' && fill !== 'none') check(e, parts(fill), [255, 255, 255]);
      texts++;
    } else if (seen(e)) {
      check(e, parts(getComputedStyle(e).color), ground(e));
      texts++;
    }
  }
  if (texts < 200) wrong.push('only ' + texts + ' texts were looked at');
  return wrong;
})()
