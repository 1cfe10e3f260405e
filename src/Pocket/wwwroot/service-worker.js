// While the desk is being built nothing is kept, so that every change is seen at once.
self.addEventListener('fetch', () => { });
