/* The buttons for passkeys, on the pages for signing in and of one's account. */
(() => {
  const { browserSupportsWebAuthn, startAuthentication, startRegistration } = SimpleWebAuthnBrowser;

  /** In the language of the page, which writes them where the fault is shown. */
  const pageWords = () => document.getElementById('passkey-wrong').dataset;

  async function post(path, body) {
    const answer = await fetch(`/network/passkeys/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    const text = await answer.text();
    const said = text === '' ? {} : JSON.parse(text);
    if (!answer.ok) throw new Error(said.wrong ?? pageWords().notTaken);
    return said;
  }

  async function signIn(household) {
    const optionsJSON = await post('sign-in-options', {});
    const response = await startAuthentication({ optionsJSON });
    await post('sign-in', { response, household });
    location.assign('/');
  }

  async function add(name) {
    const optionsJSON = await post('add-options', {});
    const response = await startRegistration({ optionsJSON });
    await post('add', { response, name });
    location.reload();
  }

  /** The browser's own words for "cancelled" and "no key here" are the same, and long. */
  function words(error) {
    if (error.name === 'NotAllowedError') return pageWords().cancelled;
    if (error.name === 'InvalidStateError') return pageWords().isHere;
    return error.message;
  }

  function onSubmit(id, act) {
    const form = document.getElementById(id);
    if (!form || !browserSupportsWebAuthn()) return;
    form.hidden = false;
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      const wrong = document.getElementById('passkey-wrong');
      wrong.hidden = true;
      act(new FormData(form)).catch((error) => {
        wrong.textContent = words(error);
        wrong.hidden = false;
      });
    });
  }

  onSubmit('passkey-sign-in', () => signIn(document.querySelector('[name=household]').value.trim()));
  onSubmit('passkey-add', (fields) => add(String(fields.get('name')).trim()));
})();
