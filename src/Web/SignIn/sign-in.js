// Passkeys, for the sign-in page and for the desk's settings. Talks to this desk only.
(() => {
  "use strict";
  const bytes = text => Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), c => c.charCodeAt(0));
  const text = buffer => btoa(String.fromCharCode(...new Uint8Array(buffer))).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
  const post = async (path, body, token) => {
    const headers = { "Content-Type": "application/json", "Accept": "application/json", "X-Watersown": "1" };
    if (token) headers["X-Watersown-Token"] = token;
    const answer = await fetch(path, { method: "POST", headers, body: JSON.stringify(body), credentials: "same-origin" });
    if (!answer.ok) throw new Error(path + " said " + answer.status);
    return answer.status === 204 ? null : answer.json();
  };

  async function signIn() {
    const { ceremony, options } = await post("/sign-in/passkey/options", {});
    options.challenge = bytes(options.challenge);
    options.allowCredentials = (options.allowCredentials || []).map(c => ({ ...c, id: bytes(c.id) }));
    const key = await navigator.credentials.get({ publicKey: options });
    return post("/sign-in/passkey", {
      ceremony,
      response: {
        id: key.id, rawId: text(key.rawId), type: key.type, clientExtensionResults: key.getClientExtensionResults(),
        response: {
          authenticatorData: text(key.response.authenticatorData), clientDataJSON: text(key.response.clientDataJSON),
          signature: text(key.response.signature), userHandle: key.response.userHandle ? text(key.response.userHandle) : null,
        },
      },
    });
  }

  // Adds a passkey of this device to whoever is signed in; the label is for the list.
  async function register(label, token) {
    const { ceremony, options } = await post("/api/passkeys/options", {}, token);
    options.challenge = bytes(options.challenge);
    options.user.id = bytes(options.user.id);
    options.excludeCredentials = (options.excludeCredentials || []).map(c => ({ ...c, id: bytes(c.id) }));
    const key = await navigator.credentials.create({ publicKey: options });
    return post("/api/passkeys", {
      ceremony, label,
      response: {
        id: key.id, rawId: text(key.rawId), type: key.type, clientExtensionResults: key.getClientExtensionResults(),
        response: { attestationObject: text(key.response.attestationObject), clientDataJSON: text(key.response.clientDataJSON), transports: key.response.getTransports ? key.response.getTransports() : [] },
      },
    }, token);
  }

  window.watersownPasskey = { signIn, register, known: () => typeof PublicKeyCredential !== "undefined" };
  const button = document.getElementById("passkey");
  if (!button || !window.watersownPasskey.known()) return;
  button.hidden = false;
  button.addEventListener("click", async () => {
    try {
      await signIn();
      location.assign("/");
    } catch {
      document.getElementById("passkey-failed").hidden = false;
    }
  });
})();
