import { useEffect, useState } from 'preact/hooks';

/** A QR code that the service drew. As an image, since nothing of a text becomes part of the page. */
export function QrCode({ svg, words }: { readonly svg: string; readonly words: string }) {
  const [address, setAddress] = useState<string | undefined>(undefined);
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [svg]);
  return address === undefined ? null : <img class="qr" src={address} alt={words} width={240} height={240} />;
}
