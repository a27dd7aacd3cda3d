/** Script for the page: a promise that is kept when every pattern is drawn anew after what comes next. */
export const untilDrawn = `new Promise((done) =>
    new PerformanceObserver((list, observer) => {
      if (list.getEntriesByName('drawn').length === 0) return;
      observer.disconnect();
      done();
    }).observe({ type: 'mark' }))`;
