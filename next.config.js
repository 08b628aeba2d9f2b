/** @type {import('next').NextConfig} */
export default {
  poweredByHeader: false,
  typedRoutes: true,
  reactStrictMode: true,
  serverExternalPackages: ['pg', 'pg-copy-streams'],
  // a body that passes proxy.ts is cut off here, silently: above what intake itself refuses as too large (lib/changes/load-upload.ts)
  experimental: { proxyClientMaxBodySize: '136mb' },
};
